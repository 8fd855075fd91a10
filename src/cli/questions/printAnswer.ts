import { explain, type Messages, showQuantity } from '../../message/index.js'
import type { Quantity } from '../../quantity/index.js'
import type { ExitCode, QuestionIo } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'

/** The answer in one line, and its result. */
export interface QuestionAnswer {
  readonly text: string
  readonly result: object
  readonly isYes: boolean
}

/** Prints the answer and the reasons; the exit code is yes or no. */
export function printAnswer(
  { values }: ParsedWords,
  io: QuestionIo,
  { text, result, isYes }: QuestionAnswer,
): ExitCode {
  if (values.format === 'json') io.print(JSON.stringify(result, null, 2))
  else io.print([text, ...explain(result, io.catalogue).map((reason) => `  ${reason}`)].join('\n'))
  return isYes ? 0 : 1
}

/** A quantity as text for an answer. */
export const formatAnswer = (quantity: Quantity, { marks }: Messages): string =>
  showQuantity(quantity, marks) ?? ''

export const capitalize = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
