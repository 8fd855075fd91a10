import type { WallPanel, WallPart, WallPhrase } from '../service/index.js'

/** The sections of a wall card, in order. */
export type WallSectionId = 'wallMissing' | 'panels' | 'job' | 'settings' | 'pours' | 'sizes' | 'wallSources'

type Words<Names extends string> = Readonly<Record<Names, string>>

/** All words on a wall card that do not come from the facts or from the words of cards. They contain no digits. */
export interface WallWords {
  /** Above the machine's name. */
  readonly title: string
  readonly sections: Words<WallSectionId>
  /** The card is only for this machine, and the manual has priority. */
  readonly authority: readonly string[]
  /** Signal word and sentence: crushing, then burns. */
  readonly cautions: readonly { readonly word: string; readonly text: string }[]
  /** The letters in front of a part's number on the card, such as `F` for fill. */
  readonly letters: Words<WallPart['role']>
  readonly access: Words<WallPanel['access']>
  readonly columns: Words<'tool' | 'manual' | 'wrench'>
  readonly fill: Words<NonNullable<WallPanel['fill']>['method']>
  readonly reading: Words<'screwed in' | 'resting'>
  readonly attitude: Words<'level on its wheels' | 'level on stands'>
  readonly engine: Words<'stopped' | 'running'>
  readonly wheelMarks: Words<'mark down' | 'mark level' | 'mark up'>
  /** The mark of a wheel as on the face of a clock. */
  readonly clockPositions: Words<'mark down' | 'mark level' | 'mark up'>
  readonly boltOrders: Words<NonNullable<WallPart['pattern']>>
  readonly roles: Words<'fill' | 'drain' | 'level'>
  readonly job: Words<WallPhrase>
  /** The ends of the parts of a pour. */
  readonly pour: Words<'hose fills' | 'funnel empties' | 'drips out'>
  readonly labels: Words<
    | 'serial'
    | 'first'
    | 'severe'
    | 'times'
    | 'submerged'
    | 'beforeNextUse'
    | 'each'
    | 'loosen'
    | 'tighten'
    | 'sharedOil'
    | 'recheck'
    | 'drainAt'
    | 'breather'
    | 'seal'
    | 'where'
    | 'magnet'
    | 'stopAt'
    | 'stands'
    | 'setting'
    | 'byManual'
    | 'scale'
    | 'otherWrench'
    | 'otherOil'
    | 'clock'
    | 'timesFor'
    | 'untilDry'
    | 'jug'
    | 'pours'
    | 'checkLine'
    | 'acrossFlats'
    | 'and'
    | 'wrenchHabits'
    | 'wheelPositions'
    | 'clockwise'
    | 'leftToRight'
  >
  /** A clock time of a pour, in minutes and seconds. */
  readonly clock: (seconds: number) => string
}
