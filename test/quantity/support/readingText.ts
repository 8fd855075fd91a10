import type { Result } from '../../../src/base/finding.js'
import type { PrintedBand } from '../../../src/v1/quantity.js'

/** One line for a reading or a refusal, in the notation of `unitTexts.ts`. */
export function readingText(result: Result<PrintedBand>): string {
  const codes = result.findings.map(({ code, params }) => {
    const { candidates } = params
    return code.replace('quantity/', '') + (Array.isArray(candidates) ? ` [${candidates.join(' ')}]` : '')
  })
  if (!result.ok) return `refused ${codes.join(', ')}`
  return [bandText(result.value), ...codes.map((code) => `!${code}`)].join(' ')
}

function bandText(value: PrintedBand): string {
  const printed = value.asPrinted === undefined ? '' : ` (${value.asPrinted})`
  if (value.kind === 'nominal') return `${value.value}${printed} ${value.unit}`
  if (value.kind === 'nominal with tolerance') {
    return `${value.value} -${value.minus} +${value.plus}${printed} ${value.unit}`
  }
  if (value.max === undefined) return `>=${value.min}${printed} ${value.unit}`
  if (value.min === undefined) return `<=${value.max}${printed} ${value.unit}`
  return `${value.min}..${value.max}${printed} ${value.unit}`
}
