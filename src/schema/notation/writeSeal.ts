import type { Value, WriteSource } from './writer.js'
import { isNotStated, joinParts, value } from './writeValue.js'

/** Writes a seal without its own source. */
export function formatSeal(seal: Value, source: WriteSource): string {
  const { kind, form, material, size, designation, product, bead, cureBeforeOil, replace } = seal
  const { partNumber, supersededBy, equivalents } = seal
  if (kind === 'none' || kind === 'not stated') return kind
  const ifStated = (word: string | undefined) => (word === 'not stated' ? undefined : word)
  const figures =
    size && [size.inside, size.outside, size.thickness, size.section].filter(Boolean).join(' x ')
  const name =
    kind === 'gasket'
      ? ['gasket', material]
      : product !== undefined
        ? [kind, product]
        : [
            kind === 'crush washer' && ifStated(form),
            ifStated(material),
            form === 'profile ring' ? form : kind,
            designation,
          ]
  return joinParts(
    [...name, size && `${figures} ${size.unit}`].filter(Boolean).join(' '),
    bead && !isNotStated(bead) && `bead ${value(bead, source)}`,
    cureBeforeOil && !isNotStated(cureBeforeOil) && `cure ${value(cureBeforeOil, source)}`,
    ifStated(replace),
    partNumber && `part ${partNumber}`,
    supersededBy && `superseded by ${formatNumber(supersededBy, source)}`,
    ...(equivalents ?? []).map((one: Value) => `equivalent to ${formatNumber(one, source)}`),
  )
}

const formatNumber = ({ partNumber, source: own }: Value, source: WriteSource): string =>
  `${partNumber}${source(own)}`
