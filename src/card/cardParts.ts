import type { JsonPointer } from '../base/index.js'
import type { CardSectionId } from '../message/index.js'
import type { TorqueDrawing } from '../service/index.js'

/**
 * Where a piece of text on the card comes from: printed in the manual, also printed there, calculated by us, or a gap:
 * not stated or unknown.
 */
export type SpanTone = 'printed' | 'also printed' | 'computed' | 'gap'

/** A run of text. Text from the plan names its place in the plan. */
export interface Span {
  readonly text: string
  /** Pointer into the visit plan. Absent: the catalogue's own words, which contain no figure. */
  readonly from?: JsonPointer
  readonly tone?: SpanTone
}

export type Line = readonly Span[]

export interface CardCell {
  readonly lines: readonly Line[]
  /** Torques on one axis; the row has the same figures as text. */
  readonly drawing?: TorqueDrawing
}

/** The first cell of a row names the row. */
export interface CardTable {
  readonly kind: 'table'
  readonly caption: Line
  readonly columns: readonly string[]
  readonly rows: readonly (readonly CardCell[])[]
}

/** A list of things to prepare or to know; a `box` is for a tick. */
export interface CardList {
  readonly kind: 'list'
  readonly heading?: string
  readonly picture?: PictureName
  readonly box: boolean
  readonly items: readonly { readonly line: Line; readonly notes: readonly Line[] }[]
}

/** The figures of one gearcase, those needed at work in large type. */
export interface CardFigurePanel {
  readonly kind: 'plate'
  readonly name: Line
  readonly picture?: PictureName
  readonly rows: readonly FigurePanelRow[]
}

export interface FigurePanelRow {
  readonly label: Line
  readonly value: Line
  readonly size: 'large' | 'middle' | 'small'
  readonly notes: readonly Line[]
}

export interface CardSteps {
  readonly kind: 'steps'
  readonly groups: readonly { readonly heading: Line; readonly steps: readonly CardStep[] }[]
}

/** `word` comes first, where the sentence does not state the severity itself. */
export interface CardCaution {
  readonly word?: string
  /** About damage alone: without the safety alert symbol, which ANSI Z535.6 keeps for injury. */
  readonly notice?: true
  readonly line: Line
}

export interface CardStep {
  readonly number: number
  /** To be read before the step. */
  readonly cautions: readonly CardCaution[]
  readonly full: Line
  readonly short: Line
  readonly note?: Line
}

/** Lines to write on by hand. */
export interface CardBlanks {
  readonly kind: 'blanks'
  readonly heading?: Line
  readonly fields: readonly { readonly label: string; readonly choices?: readonly string[] }[]
}

export type CardPart = CardTable | CardList | CardFigurePanel | CardSteps | CardBlanks

export type PictureName = 'plug' | 'washer' | 'wheel marks' | 'pour'

export interface CardSection {
  readonly id: CardSectionId
  readonly heading: string
  readonly parts: readonly CardPart[]
}

/** One card, ready for any renderer: every word already in its language, every figure with its pointer. */
export interface CardModel {
  readonly kind: 'service-card'
  readonly version: '1.0'
  readonly language: string
  readonly direction: 'ltr' | 'rtl'
  readonly extent: 'full' | 'short'
  readonly title: string
  /** The title of the expert's card. */
  readonly shortTitle: string
  readonly machine: Line
  readonly about: Line
  /** The sheet's own header, such as that its data are invented. */
  readonly header?: Line
  readonly variant: { readonly known: boolean; readonly label: string; readonly lines: readonly Line[] }
  readonly facts: readonly { readonly label: string; readonly value: Line }[]
  /** What comes before this card: the manual, the codes, those with a licence. */
  readonly authority: readonly string[]
  readonly cautions: { readonly label: string; readonly cautions: readonly CardCaution[] }
  readonly sections: readonly CardSection[]
  /** Words that renderers put on what they draw. */
  readonly marks: {
    readonly computed: string
    readonly pictures: Readonly<Record<PictureName, string>>
    /** What the bars and the pointer of a torque drawing mean. */
    readonly legend: { readonly allowed: string; readonly trueBand: string; readonly setting: string }
  }
}
