import { checkWasherFit } from '../../seal/index.js'
import type { CrushWasher } from '../../spec/index.js'
import type { ExitCode, QuestionIo } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { printAnswer } from './printAnswer.js'
import { readNotation, requireOption, requireSubject } from './readText.js'

/** `washer`: whether a sealing washer fits a thread. */
export async function runWasher(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const text = requireSubject(words, 'washer', '"18 x 24 x 1.5 mm"').replaceAll(/\s*[x×]\s*/g, ' x ')
  const washer = readNotation(
    'washer',
    `flat crush washer ${text}, every opening`,
    'seal',
    io,
    text,
  ) as CrushWasher
  const verdict = checkWasherFit(requireOption(words, 'washer', 'thread', 'M18x1.5'), washer.size)
  return printAnswer(words, io, {
    text: io.words.washerVerdicts[verdict.verdict],
    result: verdict,
    isYes: verdict.verdict === 'in the table' || verdict.verdict === 'plausible',
  })
}
