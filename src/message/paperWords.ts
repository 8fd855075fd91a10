import type { FillMethod, MachineEventKind } from '../spec/index.js'

/** The sections of the papers beside the card and the slip. */
export type PaperSectionId =
  | 'scenes'
  | 'filming'
  | 'next'
  | 'chart'
  | 'intervals'
  | 'picks'
  | 'tools'
  | 'differences'

type Words<Names extends string> = Readonly<Record<Names, string>>

/** All words of the small papers that come neither from their facts nor from the words of cards. They contain no digits. */
export interface PaperWords {
  readonly titles: Words<'record' | 'label' | 'chart' | 'picks' | 'differences'>
  readonly sections: Words<Exclude<PaperSectionId, 'scenes' | 'filming'>>
  readonly columns: Words<
    'gearcase' | 'oil' | 'quantity' | 'level' | 'service' | 'every' | 'severe' | 'first' | 'figure'
  >
  readonly labels: Words<
    | 'dueNow'
    | 'notKnown'
    | 'whicheverFirst'
    | 'nothing'
    | 'same'
    | 'afterEvent'
    | 'shared'
    | 'bottle'
    | 'count'
  >
  /** How the level is checked, before the name of the opening. */
  readonly methods: Words<FillMethod['kind']>
  readonly events: Words<MachineEventKind>
}
