import { published } from '../support/published.js'

interface AdaptorExample {
  readonly source: string
  readonly torque: number
  readonly unit: 'lbf.in' | 'lbf.ft'
  readonly lever: number
  readonly extension: number
  readonly angle?: number
  /** The source's own digits. */
  readonly printed: string
}

/** Settings of a torque wrench with an adaptor in line, lengths in inches. */
export const TORQUE_ADAPTORS: readonly AdaptorExample[] = published(
  {
    room: 'torque',
    source: 'US Navy and US Army manuals, a helicopter maker’s manual, a wrench maker’s help page',
    edition: 'NAVEDTRA 14315 family, figs 3-44 and 3-45; TM 1-1500-204-23-9, fig 8-16; chapter 20; not dated',
    place: 'worked examples',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  [
    {
      source: 'US Navy aviation training manual',
      torque: 100,
      unit: 'lbf.in',
      lever: 12,
      extension: 6,
      printed: '66.7',
    },
    { source: 'US Army TM', torque: 300, unit: 'lbf.in', lever: 10, extension: 4, printed: '214' },
    { source: 'helicopter maker', torque: 135, unit: 'lbf.in', lever: 10, extension: 1.5, printed: '117' },
    { source: 'wrench maker', torque: 30, unit: 'lbf.ft', lever: 12, extension: 6, printed: '20' },
  ],
)

export const ANGLED_ADAPTOR: readonly AdaptorExample[] = published(
  {
    room: 'torque',
    source: 'US Army TM 9-254, formula with an angle',
    edition: 'not named',
    place: 'fig 4-6, worked at 45 degrees',
    read: 'calculated',
    agrees: 'to the digits shown',
  },
  [
    {
      source: 'formula of US Army TM 9-254',
      torque: 100,
      unit: 'lbf.ft',
      lever: 12,
      extension: 6,
      angle: 45,
      printed: '73.8796',
    },
  ],
)
