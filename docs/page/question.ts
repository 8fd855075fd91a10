import { languages } from 'virtual:question-languages'
import { calendarTexts } from '../../src/message/en/calendar.js'
import { intervalTexts } from '../../src/message/en/interval.js'
import { quantityTexts } from '../../src/message/en/quantity.js'
import { torqueTexts } from '../../src/message/en/torque.js'
import { explain, type Messages } from '../../src/v1/message.js'
import { answerDueForm, answerTorqueForm, type FormAnswer, type Values } from './answerForms.js'
import { questionLabels as englishLabels } from './labels/en.js'
import type { QuestionLabels } from './labels/labels.js'
import { listLanguages, showTexts } from './labels/showTexts.js'

/** The English texts of these two questions: the package has them only with all other calculations. */
const english: Messages = {
  language: 'en',
  marks: { decimal: '.', group: '\u202f' },
  list: (items) => new Intl.ListFormat('en').format(items),
  plural: (value) => (value === 1 ? 'one' : 'other'),
  texts: { ...calendarTexts, ...intervalTexts, ...quantityTexts, ...torqueTexts },
}

let messages = english
let labels: QuestionLabels = englishLabels

const UNITS = { 'N.m': 'N·m', 'lbf.ft': 'lbf·ft', 'lbf.in': 'lbf·in', 'kgf.m': 'kgf·m', 'kgf.cm': 'kgf·cm' }

const FORMS = { torque: answerTorqueForm, due: answerDueForm } as const

type FormName = keyof typeof FORMS

const forms = (Object.keys(FORMS) as FormName[]).map((name) => ({
  name,
  form: document.getElementById(name) as HTMLFormElement,
  output: document.getElementById(`${name}-answer`) as HTMLOutputElement,
}))

const fieldsOf = (form: HTMLFormElement) =>
  [...form.elements].filter(
    (element): element is HTMLInputElement | HTMLSelectElement =>
      element instanceof HTMLInputElement || element instanceof HTMLSelectElement,
  )

function readForm(form: HTMLFormElement): Values {
  return Object.fromEntries(
    fieldsOf(form).map((field) => [field.name, field.validity.valid ? field.value : Number.NaN.toString()]),
  )
}

function showAnswer(name: FormName, form: HTMLFormElement, output: HTMLOutputElement): void {
  let answer: FormAnswer
  try {
    answer = FORMS[name](readForm(form), messages.marks, labels)
  } catch (error) {
    answer = { text: labels.unusable(error instanceof Error ? error.message : String(error)) }
  }
  const lines = answer.result === undefined ? [] : explain(answer.result, messages)
  const head = document.createElement('strong')
  head.textContent = answer.text
  output.replaceChildren(
    head,
    ...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })),
  )
}

/** The values of both forms and the language are in the fragment of the address, which a browser never sends. */
function keepValues(): void {
  const entries = forms.flatMap(({ name, form }) =>
    fieldsOf(form).map((field) => [`${name}.${field.name}`, field.value]),
  )
  history.replaceState(null, '', `#${new URLSearchParams([...entries, ['language', messages.language]])}`)
}

function takeValues(): void {
  const values = new URLSearchParams(location.hash.slice(1))
  for (const { name, form } of forms)
    for (const field of fieldsOf(form)) {
      const value = values.get(`${name}.${field.name}`)
      if (value === null) continue
      const before = field.value
      field.value = value
      // A list refuses a text that is none of its own.
      if (field instanceof HTMLSelectElement && field.selectedIndex === -1) field.value = before
    }
}

for (const { form } of forms)
  for (const field of fieldsOf(form))
    if (field instanceof HTMLSelectElement)
      field.append(...Object.entries(UNITS).map(([unit, symbol]) => new Option(symbol, unit)))
const scale = forms[0]?.form.elements.namedItem('scale')
if (scale instanceof HTMLSelectElement) scale.value = 'lbf.in'

const showAll = (): void => {
  for (const { name, form, output } of forms) showAnswer(name, form, output)
}
for (const { name, form, output } of forms) {
  form.addEventListener('input', () => {
    showAnswer(name, form, output)
    keepValues()
  })
  form.addEventListener('submit', (event) => event.preventDefault())
}
const list = document.getElementById('language') as HTMLSelectElement

async function chooseLanguage(tag: string): Promise<void> {
  // The words before stay if a language cannot be loaded.
  const loaded = await languages[tag]?.().catch(() => ({ messages, labels }))
  ;({ messages, labels } = loaded ?? { messages: english, labels: englishLabels })
  list.value = messages.language
  showTexts(messages.language, labels.texts)
  const whole = document.querySelector<HTMLAnchorElement>('[data-text=wholeSheet]')
  if (whole !== null) whole.href = `index.html#language=${messages.language}`
  showAll()
}

/** Answers at once in the language of the page, and again in that of the address. */
function start(): void {
  takeValues()
  showAll()
  const tag = new URLSearchParams(location.hash.slice(1)).get('language') ?? 'en'
  if (tag !== messages.language) void chooseLanguage(tag)
}

listLanguages(list, Object.keys(languages))
list.addEventListener('change', () => void chooseLanguage(list.value).then(keepValues))
addEventListener('hashchange', start)
start()
