import type {
  LeakFinding,
  MagnetFinding,
  OilFinding,
  RecordEntry,
  UnmeasuredTightening,
} from '../spec/index.js'

/** The sections of an owner's slip, in order. */
export type SlipSectionId = 'done' | 'found' | 'notDone' | 'next' | 'samples'

type Words<Names extends string> = Readonly<Record<Names, string>>

/**
 * All words on an owner's slip that come neither from its data nor from the words of cards. They contain no
 * digits.
 */
export interface SlipWords {
  /** The heading above the machine's name. */
  readonly title: string
  readonly sections: Words<SlipSectionId>
  /** The machine's manual has priority. */
  readonly authority: readonly string[]
  readonly labels: Words<SlipLabel>
  readonly oil: Words<OilFinding>
  readonly magnet: Words<MagnetFinding>
  /** Findings in a filter. */
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
