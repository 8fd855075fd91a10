import { oilMeets } from '../../oil/index.js'
import type { OfferedOil, OilChoice, Oils } from '../../spec/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { printAnswer } from './printAnswer.js'
import { readNotation, requireOption, requireSubject } from './readText.js'

const LIMITED_SLIP = { yes: 'contains additive', no: 'no additive' } as const

/** `meets`: whether the manual permits an oil. */
export async function runMeets(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const label = requireSubject(words, 'meets', '"80W-90 GL-5"')
  const [firstLabel = '', ...moreCategories] = label.split('/')
  const oil = readOil('meets', firstLabel, io)
  const additive = readYesOrNo(words, 'additive')
  const offered: OfferedOil = {
    name: oil.kind === 'grade' ? label : oil.name,
    ...(oil.kind === 'grade' && { grade: oil.grade, system: oil.system }),
    ...(oil.kind === 'grade' &&
      oil.category !== undefined && { categories: [oil.category, ...moreCategories] }),
    ...(additive && { limitedSlip: LIMITED_SLIP[additive] }),
  }
  const permitted = readOil('--manual', requireOption(words, 'meets', 'manual', '"80W-90 GL-4"'), io)
  const { ambient } = readOptions(words, io)
  const verdict = oilMeets(permitted, offered, {
    yellowMetal: readYesOrNo(words, 'yellow-metal') ?? 'not stated',
    ...(ambient && { ambient }),
  })
  const text = io.words.oilVerdicts[verdict.verdict]
  return printAnswer(words, io, { text, result: verdict, isYes: verdict.verdict === 'yes' })
}

/** One oil; a grade may be written without SAE. */
function readOil(option: string, text: string, io: QuestionIo): OilChoice {
  const oils = readNotation(
    option,
    text.replace(/^(?=\d)/, 'SAE ').replace(/^VG/, 'ISO VG'),
    'oils',
    io,
  ) as Oils
  const [only, ...others] = oils.kind === 'oils' ? oils.choices : []
  if (only === undefined || others.length > 0)
    throw new UsageError('oneOil', { given: `${option} ${JSON.stringify(text)}` })
  return only
}

function readYesOrNo({ values }: ParsedWords, name: 'yellow-metal' | 'additive'): 'yes' | 'no' | undefined {
  const word = values[name]
  if (word === undefined || word === 'yes' || word === 'no') return word
  throw new UsageError('notOneOf', { given: `--${name} ${word}`, expected: 'yes, no' })
}
