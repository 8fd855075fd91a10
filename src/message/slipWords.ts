import type {
  LeakFinding,
  MagnetFinding,
  OilFinding,
  RecordEntry,
  UnmeasuredTightening,
} from '../spec/index.js'

/** The parts of an owner's slip, in the order in which they are read. */
export type SlipSectionId = 'done' | 'found' | 'notDone' | 'next' | 'samples'

type Words<Names extends string> = Readonly<Record<Names, string>>

/** Every word on an owner's slip that is not from its data, beside those of the card. No word contains a digit. */
export interface SlipWords {
  /** Above the machine's name. */
  readonly title: string
  readonly sections: Words<SlipSectionId>
  /** The machine's manual comes before the slip. */
  readonly authority: readonly string[]
  readonly labels: Words<SlipLabel>
  readonly oil: Words<OilFinding>
  readonly magnet: Words<MagnetFinding>
  /** What was in a filter. */
  readonly filter: Words<Exclude<MagnetFinding, 'no magnet'>>
  readonly leaks: Words<LeakFinding>
  readonly level: Words<NonNullable<RecordEntry['level']>>
  readonly tightened: Words<UnmeasuredTightening | 'by the manual'>
}

type SlipLabel =
  | 'by'
  | 'corrected'
  | 'record'
  | 'use'
  | 'usable'
  | 'notToBeUsed'
  | 'oilOf'
  | 'tightened'
  | 'turns'
  | 'newSeals'
  | 'sameSeals'
  | 'newFilter'
  | 'cleanedFilter'
  | 'part'
  | 'shields'
  | 'sample'
  | 'noResult'
  | 'note'
  | 'at'
  | 'on'
  | 'expected'
  | 'first'
  | 'wasDue'
