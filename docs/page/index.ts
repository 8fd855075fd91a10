import { examples } from 'virtual:examples'
import { languages } from 'virtual:languages'
import { cardStyle, renderHtml } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import type { Catalogue } from '../../src/v1/message.js'
import {
  answerDue,
  answerFigures,
  answerVisit,
  answerWall,
  isLogOfSheet,
  type Question,
  type UnitChoice,
} from './answer.js'
import type { Editor } from './editor.js'
import { pageLabels as english } from './labels/en.js'
import type { PageLabels } from './labels/labels.js'
import { listLanguages, showTexts } from './labels/showTexts.js'
import {
  checkTexts,
  KINDS,
  readTexts,
  TEXT_NAMES,
  type TextFinding,
  type TextName,
  type Texts,
} from './readTexts.js'
import { readFragment, type Shared, writeFragment } from './shareLink.js'

export interface Example {
  readonly folder: keyof PageLabels['examples']
  readonly today: string
  readonly ambient: number
  readonly texts: Texts
}

/** How long a pause in typing must be before the texts are read, in milliseconds. */
const TYPING_PAUSE = 250
/** In bytes. */
const MAX_FILE_SIZE = 2_000_000
/** A longer address may be cut by programs for mail and chat. */
const LONG_LINK = 8000
const MAX_FINDINGS = 100

const find = <Kind extends HTMLElement>(id: string): Kind => {
  const found = document.getElementById(id)
  if (found === null) throw new Error(`no element ${id}`)
  return found as Kind
}
const plain = find<HTMLTextAreaElement>('plain')
const inputs = {
  example: find<HTMLSelectElement>('example'),
  today: find<HTMLInputElement>('today'),
  ambient: find<HTMLInputElement>('ambient'),
  units: find<HTMLSelectElement>('units'),
  language: find<HTMLSelectElement>('language'),
}

let texts: Texts = { sheet: '', log: '', toolbox: '' }
let shown: TextName = 'sheet'
let catalogue: Catalogue = en
let labels: PageLabels = english
let editor: Editor | undefined
let findings: readonly TextFinding[] = []
let timer: ReturnType<typeof setTimeout> | undefined
/** The last sheet that could be read, unless there is no text at all. */
let lastSheet: Question['sheet'] | undefined
/** Counts the answers: an older one stops when a newer one begins. */
let turn = 0
/** The card is in a shadow tree, so that neither style changes the other. */
const cardSheet = new CSSStyleSheet()
const cardRoot = find('card').attachShadow({ mode: 'open' })
cardRoot.adoptedStyleSheets = [cardSheet]

const notify = (text: string): void => {
  find('notice').textContent = text
}

/** Makes an element with texts and elements in it; nothing here is read as HTML. */
function make(tag: string, className: string, ...content: readonly (string | Node)[]): HTMLElement {
  const element = document.createElement(tag)
  if (className !== '') element.className = className
  element.append(...content)
  return element
}

const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve))

/** Reads the texts and shows the answers, the most urgent first, with a pause for the keyboard between them. */
async function showAnswers(): Promise<void> {
  turn += 1
  const own = turn
  const { today } = inputs
  if (!today.validity.valid || today.value === '') {
    notify(labels.noDate)
    return
  }
  try {
    const read = readTexts(texts)
    const { log, toolbox } = read
    if (read.sheet !== undefined || texts.sheet.trim() === '') lastSheet = read.sheet
    // While a text cannot be read, the answer is that to the text before it, in the chosen language and units.
    const sheet = lastSheet
    const ambient = inputs.ambient.value === '' ? undefined : Number(inputs.ambient.value)
    const question: Question | undefined = sheet && {
      sheet,
      ...(log && { log }),
      ...(toolbox && { toolbox }),
      today: today.value,
      ...(ambient !== undefined && inputs.ambient.validity.valid && { ambient }),
    }
    const tasks = [
      ...(question === undefined
        ? [showMissing]
        : [showDue, showVisit, showCard].map((show) => () => show(question))),
      () => showFindings(checkTexts(read, today.value, catalogue, labels)),
    ]
    for (const run of tasks) {
      run()
      await nextTask()
      if (own !== turn) return
    }
  } catch (error) {
    notify(labels.noAnswer(error instanceof Error ? error.message : String(error)))
  }
}

/** Without any sheet there is no answer. */
function showMissing(): void {
  for (const id of ['visit', 'figures']) fill(id)
  cardRoot.replaceChildren()
  fill('due', make('p', '', texts.sheet.trim() === '' ? labels.noSheet : labels.unreadableSheet))
}

function showFindings(next: readonly TextFinding[]): void {
  findings = next
  find('stale').hidden = !findings.some(({ severity }) => severity === 'error')
  editor?.setFindings(findings)
  const items = findings.slice(0, MAX_FINDINGS).map((finding) => {
    const { name, line, message, fixes, severity } = finding
    const where = labels.findingAt(labels.places[name], line, labels.severities[severity])
    const place = make('span', 'place', `${where} `)
    const advice = fixes.length === 0 ? '' : ` ${labels.advice(fixes)}`
    const button = make('button', severity, place, message + advice)
    button.setAttribute('type', 'button')
    button.addEventListener('click', () => void goTo(finding))
    return make('li', '', button)
  })
  const more = findings.length - items.length
  if (more > 0) items.push(make('li', 'note', labels.moreFindings(more)))
  if (items.length === 0) items.push(make('li', 'note', labels.noFindings))
  fill('findings', ...items)
}

async function goTo({ name, from, to }: TextFinding): Promise<void> {
  showView('text')
  showTab(name)
  await loadEditor()
  editor?.select(from, to)
}

function showDue(question: Question): void {
  const answers = isLogOfSheet(question) ? answerDue(question, catalogue) : []
  const items = answers.map(({ state, verdict, service, reasons }) => {
    const details = make('details', '')
    details.append(
      make('summary', '', make('span', `state ${verdict.replace(' ', '-')}`, state), ' ', service),
      ...reasons.map((reason) => make('p', '', reason)),
    )
    return make('li', '', details)
  })
  const content = items.length > 0 ? make('ul', '', ...items) : make('p', '', describeNoLog(question))
  fill('due', content)
}

function describeNoLog({ sheet, log }: Question): string {
  if (texts.log.trim() === '') return labels.noLog
  if (log === undefined) return labels.unreadableLog
  if (log.sheet.id !== sheet.id || log.sheet.revision !== sheet.revision)
    return labels.otherLog(log.sheet, sheet)
  return labels.noService
}

function showVisit(question: Question): void {
  const lines = isLogOfSheet(question) ? answerVisit(question, catalogue) : []
  fill(
    'visit',
    lines.length > 0
      ? make('ul', '', ...lines.map((line) => make('li', '', line)))
      : make('p', '', labels.noVisit),
  )
}

function showCard(question: Question): void {
  const wall = answerWall(question, catalogue)
  if (wall === undefined) {
    cardRoot.replaceChildren(make('p', '', labels.noCard))
    fill('figures')
    return
  }
  cardSheet.replaceSync(`:host{all:initial;display:block}${cardStyle(wall.card)}`)
  const template = document.createElement('template')
  // The library escapes every text of a document; the content policy runs no script in any case.
  template.innerHTML = renderHtml(wall.card, { form: 'fragment' })
  // A page has one main part, and the card is in it.
  for (const part of template.content.querySelectorAll('main')) {
    const box = document.createElement('div')
    box.append(...part.childNodes)
    part.replaceWith(box)
  }
  find('card').lang = catalogue.language
  cardRoot.replaceChildren(template.content)
  showFigures(answerFigures(wall.figures, inputs.units.value as UnitChoice, catalogue))
}

function showFigures(figures: ReturnType<typeof answerFigures>): void {
  if (figures.length === 0) {
    fill('figures', make('p', '', labels.noFigures))
    return
  }
  const hasOther = figures.some(({ other }) => other !== undefined)
  const heads = [
    labels.part,
    labels.manual,
    ...(hasOther ? [inputs.units.selectedOptions[0]?.text ?? ''] : []),
  ]
  const head = make('tr', '')
  for (const text of heads) head.append(Object.assign(make('th', '', text), { scope: 'col' }))
  const rows = figures.map(({ part, printed, other }) => {
    const name = Object.assign(make('th', '', part), { scope: 'row' })
    const cell = make('td', other?.isConverted ? 'converted' : '', other?.text ?? '')
    if (other?.isConverted) cell.append(make('small', '', ` ${labels.converted}`))
    return make('tr', '', name, make('td', '', printed), ...(hasOther ? [cell] : []))
  })
  const table = make('table', '', make('thead', '', head), make('tbody', '', ...rows))
  fill('figures', table, ...(hasOther ? [make('p', 'note', labels.otherUnits)] : []))
}

/** Replaces what a part of the page shows; texts of the library are in its language. */
function fill(id: string, ...content: readonly (string | Node)[]): void {
  const place = find(id)
  place.lang = catalogue.language
  place.replaceChildren(...content)
}

function changeText(name: TextName, text: string): void {
  texts = { ...texts, [name]: text }
  clearTimeout(timer)
  timer = setTimeout(() => void showAnswers(), TYPING_PAUSE)
}

function setTexts(next: Texts): void {
  texts = next
  plain.value = texts[shown]
  editor?.setTexts(texts)
}

function showTab(name: TextName): void {
  if (name === shown) return
  shown = name
  for (const candidate of TEXT_NAMES) {
    const tab = find(`tab-${candidate}`)
    tab.setAttribute('aria-selected', String(candidate === name))
    tab.tabIndex = candidate === name ? 0 : -1
  }
  find('editor').setAttribute('aria-labelledby', `tab-${name}`)
  plain.value = texts[name]
  plain.setAttribute('aria-label', labels.fields[name])
  editor?.show(name)
}

function showView(view: string): void {
  document.body.dataset['view'] = view
  for (const button of document.querySelectorAll<HTMLElement>('[data-show]'))
    button.setAttribute('aria-pressed', String(button.dataset['show'] === view))
}

let loading: Promise<void> | undefined

/** Loads the editor when somebody turns to the text: a third of the page that a reader of answers does not need. */
function loadEditor(): Promise<void> {
  loading ??= import('./editor.js').then(
    ({ createEditor }) => {
      const isActive = document.activeElement === plain
      const host = document.createElement('div')
      const { selectionStart: from, selectionEnd: to } = plain
      plain.replaceWith(host)
      editor = createEditor(host, {
        texts,
        name: shown,
        labels,
        selection: { from, to },
        onChange: changeText,
        onMeaning: (text) => {
          showHint(text)
        },
      })
      editor.setFindings(findings)
      if (isActive) editor.select(from, to)
    },
    () => notify(labels.noEditor),
  )
  return loading
}

async function openFiles(files: Iterable<File>): Promise<void> {
  const notices: string[] = []
  let next = texts
  let last: TextName | undefined
  for (const file of files) {
    if (file.size > MAX_FILE_SIZE) {
      notices.push(labels.tooLarge(file.name))
      continue
    }
    const text = (await file.text()).replace(/^\uFEFF/, '').replaceAll('\r\n', '\n')
    const kind = /^[\s{]*["']?kind["']?\s*:\s*["']?([a-z-]+)/m.exec(text)?.[1]
    const name = TEXT_NAMES.find((candidate) => KINDS[candidate] === kind)
    if (text.includes('\0') || text.includes('\uFFFD')) notices.push(labels.notText(file.name))
    else if (name === undefined && kind !== undefined) notices.push(labels.otherKind(file.name, kind))
    else if (name === undefined && !/\.(ya?ml|json)$/i.test(file.name))
      notices.push(labels.otherFormat(file.name))
    else {
      last = name ?? shown
      next = { ...next, [last]: text }
    }
  }
  if (last !== undefined) {
    inputs.today.value = todayHere()
    setTexts(next)
    showTab(last)
    await showAnswers()
  }
  notify(notices.join(' '))
}

/** The calendar day of the clock of this computer. */
function todayHere(): string {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')
}

async function shareLink(): Promise<void> {
  const ambient = inputs.ambient.value === '' ? undefined : Number(inputs.ambient.value)
  const shared: Shared = {
    texts,
    today: inputs.today.value,
    ...(ambient !== undefined && { ambient }),
    units: inputs.units.value,
    language: catalogue.language,
  }
  const fragment = await writeFragment(shared)
  history.replaceState(null, '', fragment)
  const length = location.href.length
  const size = length > LONG_LINK ? ` ${labels.longLink(length)}` : ''
  try {
    await navigator.clipboard.writeText(location.href)
    notify(labels.linkCopied + size)
  } catch {
    notify(labels.linkInBar + size)
  }
}

async function chooseLanguage(tag: string): Promise<void> {
  const load = languages[tag]
  let notice = ''
  try {
    ;({ catalogue, labels } = load === undefined ? { catalogue: en, labels: english } : await load())
  } catch {
    notice = labels.noLanguage
  }
  inputs.language.value = catalogue.language
  showLabels()
  notify(notice)
  await showAnswers()
}

/** Writes all words that stand before an answer. */
function showLabels(): void {
  showTexts(catalogue.language, labels.texts)
  plain.setAttribute('aria-label', labels.fields[shown])
  for (const [place, { folder }] of examples.entries())
    inputs.example.options[place]?.replaceChildren(labels.examples[folder])
  const own = inputs.example.options[examples.length]
  own?.replaceChildren(labels.texts.ownText)
  find<HTMLAnchorElement>('question').href = `question.html#language=${catalogue.language}`
  editor?.setLabels(labels)
}

/** The meaning of the key at the cursor, which the schemas give in English; without one, what to do. */
function showHint(meaning: string): void {
  const hint = find('hint')
  hint.textContent = meaning === '' ? labels.texts.hint : meaning
  hint.lang = meaning === '' ? catalogue.language : 'en'
}

function startExample(place: number): void {
  const example = examples[place]
  if (example === undefined) return
  inputs.today.value = example.today
  inputs.ambient.value = String(example.ambient)
  setTexts(example.texts)
}

/** Shows the content of the link, or the first example. */
async function start(): Promise<void> {
  const shared = location.hash === '' ? 'none' : await readFragment(location.hash)
  if (typeof shared === 'string') {
    startExample(0)
    if (shared === 'broken') notify(labels.brokenLink)
    const language = new URLSearchParams(location.hash.slice(1)).get('language')
    if (language !== null && Object.hasOwn(languages, language)) return chooseLanguage(language)
  } else {
    inputs.today.value = shared.today ?? todayHere()
    inputs.ambient.value = shared.ambient === undefined ? '' : String(shared.ambient)
    if (['printed', 'metric', 'US'].includes(shared.units ?? '')) inputs.units.value = shared.units ?? ''
    inputs.example.value = ''
    setTexts(shared.texts)
    if (shared.language !== undefined && Object.hasOwn(languages, shared.language))
      return chooseLanguage(shared.language)
  }
  await showAnswers()
}

function connect(): void {
  inputs.example.append(
    ...examples.map(({ folder }, place) => new Option(labels.examples[folder], String(place))),
    new Option(labels.texts.ownText, ''),
  )
  listLanguages(inputs.language, Object.keys(languages))
  inputs.example.addEventListener('change', () => {
    if (inputs.example.value === '') {
      inputs.today.value = todayHere()
      setTexts({ sheet: '', log: '', toolbox: '' })
    } else startExample(Number(inputs.example.value))
    notify('')
    history.replaceState(null, '', location.pathname + location.search)
    void showAnswers()
  })
  for (const input of [inputs.today, inputs.ambient, inputs.units])
    input.addEventListener('change', () => void showAnswers())
  inputs.language.addEventListener('change', () => void chooseLanguage(inputs.language.value))
  find('choices').addEventListener('submit', (event) => event.preventDefault())
  find('open').addEventListener('click', () => find('file').click())
  find<HTMLInputElement>('file').addEventListener('change', ({ currentTarget }) => {
    const { files } = currentTarget as HTMLInputElement
    if (files !== null) void openFiles(files)
  })
  find('share').addEventListener('click', () => void shareLink())
  find('print').addEventListener('click', () => print())
  plain.addEventListener('input', () => changeText(shown, plain.value))
  for (const type of ['focusin', 'pointerenter'])
    find('editor').addEventListener(type, () => void loadEditor())
  for (const [place, name] of TEXT_NAMES.entries()) {
    const tab = find(`tab-${name}`)
    tab.addEventListener('click', () => showTab(name))
    tab.addEventListener('keydown', ({ key }) => {
      const step = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0
      const target = TEXT_NAMES[(place + step + TEXT_NAMES.length) % TEXT_NAMES.length]
      if (step === 0 || target === undefined) return
      showTab(target)
      find(`tab-${target}`).focus()
    })
  }
  for (const button of document.querySelectorAll<HTMLElement>('[data-show]'))
    button.addEventListener('click', () => showView(button.dataset['show'] ?? 'answer'))
  addEventListener('dragover', (event) => {
    event.preventDefault()
    document.body.classList.add('dropping')
  })
  addEventListener('dragleave', ({ relatedTarget }) => {
    if (relatedTarget === null) document.body.classList.remove('dropping')
  })
  // Before the editor, which would write the file's text at the pointer.
  addEventListener(
    'drop',
    (event) => {
      document.body.classList.remove('dropping')
      const files = event.dataTransfer?.files
      if (files === undefined || files.length === 0) return
      event.preventDefault()
      event.stopPropagation()
      void openFiles(files)
    },
    { capture: true },
  )
  addEventListener('hashchange', () => void start())
}

// On a phone the answer comes first, so the choices are closed.
if (matchMedia('(max-width: 60rem)').matches) find<HTMLDetailsElement>('more').open = false
connect()
void start()
