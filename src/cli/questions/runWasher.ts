import { checkWasherFit } from '../../seal/index.js'
import type { CrushWasher } from '../../spec/index.js'
import type { CliIo, ExitCode } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { capitalize, printAnswer } from './printAnswer.js'
import { readNotation, requireOption, requireSubject } from './readText.js'

const ANSWERS: { readonly [verdict: string]: string } = {
  'in the table': 'It fits.',
  plausible: 'It fits, by its size.',
}

/** `washer`: whether a sealing washer fits a thread. */
export async function runWasher(words: ParsedWords, io: CliIo): Promise<ExitCode> {
  const text = requireSubject(words, 'washer', '"18 x 24 x 1.5 mm"').replaceAll(/\s*[x×]\s*/g, ' x ')
  const washer = readNotation(
    'washer',
    `flat crush washer ${text}, every opening`,
    'seal',
    text,
  ) as CrushWasher
  const verdict = checkWasherFit(requireOption(words, 'washer', 'thread', 'M18x1.5'), washer.size)
  const answer = ANSWERS[verdict.verdict]
  return printAnswer(words, io, {
    text: answer ?? `${capitalize(verdict.verdict)}.`,
    result: verdict,
    isYes: answer !== undefined,
  })
}
