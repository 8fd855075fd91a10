import type { Value, WriteSource } from './writer.js'
import { isNotStated, join, value } from './writeValue.js'

/** A seal, without the source of the whole. */
export function sealText(seal: Value, source: WriteSource): string {
  const { kind, form, material, size, designation, product, bead, cureBeforeOil, replace } = seal
  const { partNumber, supersededBy, equivalents } = seal
  if (kind === 'none' || kind === 'not stated') return kind
  const known = (word: string | undefined) => (word === 'not stated' ? undefined : word)
  const figures =
    size && [size.inside, size.outside, size.thickness, size.section].filter(Boolean).join(' x ')
  const name =
    kind === 'gasket'
      ? ['gasket', material]
      : product !== undefined
        ? [kind, product]
        : [
            kind === 'crush washer' && known(form),
            known(material),
            form === 'profile ring' ? form : kind,
            designation,
          ]
  return join(
    [...name, size && `${figures} ${size.unit}`].filter(Boolean).join(' '),
    bead && !isNotStated(bead) && `bead ${value(bead, source)}`,
    cureBeforeOil && !isNotStated(cureBeforeOil) && `cure ${value(cureBeforeOil, source)}`,
    known(replace),
    partNumber && `part ${partNumber}`,
    supersededBy && `superseded by ${numberText(supersededBy, source)}`,
    ...(equivalents ?? []).map((one: Value) => `equivalent to ${numberText(one, source)}`),
  )
}

const numberText = ({ partNumber, source: own }: Value, source: WriteSource): string =>
  `${partNumber}${source(own)}`
