import { checkDocuments } from '../../rules/index.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'
import type { ExitCode } from '../runCommand.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `check`: what is wrong in documents as written. */
export async function runCheck(options: Options, world: World): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('check: name a file or a folder to check')
  const sets = await readDocuments(options.paths, world)
  const findings = sets.flatMap(({ set, findings: read }) => [
    ...read,
    ...checkDocuments(set, { today: options.today }),
  ])
  const located = locateFindings(findings, sets)
  const count = located.filter((finding) => isAtLevel(finding, options.level)).length
  const text = renderFindings(located, options.format)
  if (text !== '') world.print(text)
  if (options.format === 'text') {
    const files = sets.reduce((sum, { texts }) => sum + texts.size, 0)
    const plural = (value: number, word: string) => `${value} ${word}${value === 1 ? '' : 's'}`
    world.print(
      `${plural(files, 'document')} read, ${plural(count, 'finding')} of level ${options.level} or above.`,
    )
  }
  return count > 0 ? 1 : 0
}
