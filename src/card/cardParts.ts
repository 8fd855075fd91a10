import type { JsonPointer } from '../base/index.js'
import type { CardSectionId, PaperSectionId, SlipSectionId, WallSectionId } from '../message/index.js'
import type { TorqueDrawing } from '../service/index.js'
import type { Id, WheelMark, WrenchScale } from '../spec/index.js'

/**
 * The origin of a text: the manual's first figure, another figure of the manual, a calculated figure, or a gap (not
 * stated or not known). `strong`: words that must be seen first.
 */
export type SpanTone = 'printed' | 'also printed' | 'computed' | 'gap' | 'strong'

/** A piece of text with its origin. */
export interface Span {
  readonly text: string
  /** Pointer into the visit plan. Absent for words of the catalogue, which contain no figures. */
  readonly from?: JsonPointer
  readonly tone?: SpanTone
}

export type Line = readonly Span[]

export interface CardCell {
  readonly lines: readonly Line[]
  /** A drawing of torques. The row also states them as text. */
  readonly drawing?: TorqueDrawing
  /** How much of a limit is used. The row also states it as text. */
  readonly bar?: LimitBar
}

export interface LimitBar {
  /** The share of the limit that is used; 1 is the due point, and more is over it. */
  readonly fraction: number
  /** The values, for readers who cannot see the bar. */
  readonly text: string
}

/** The first cell of a row names the row. */
export interface CardTable {
  readonly kind: 'table'
  readonly caption: Line
  readonly columns: readonly string[]
  readonly rows: readonly (readonly CardCell[])[]
}

/** A list; with `box`, each item has a box to tick. */
export interface CardList {
  readonly kind: 'list'
  readonly heading?: string
  readonly picture?: PictureName
  readonly box: boolean
  /** Whether the items are numbered, in their order. */
  readonly numbered?: true
  readonly items: readonly { readonly line: Line; readonly notes: readonly Line[] }[]
}

/** The figures of one gearcase; the most important ones are large. */
export interface CardFigurePanel {
  readonly kind: 'plate'
  readonly name: Line
  readonly picture?: PictureName
  /** The case with its plugs. */
  readonly drawings?: readonly CardPicture[]
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

/** A caution. `word` is the signal word for a sentence without one. */
export interface CardCaution {
  readonly word?: string
  /** A caution about damage only, without the safety alert symbol, which ANSI Z535.6 reserves for injury. */
  readonly notice?: true
  readonly line: Line
}

/** A line of the order of work: steps that are done together, with one box to tick. */
export interface CardStep {
  readonly number: number
  /** Ids of the steps, in order. */
  readonly steps: readonly Id[]
  /** Cautions to read before the first step. */
  readonly cautions: readonly CardCaution[]
  readonly full: Line
  readonly short: Line
  /** The figures to have in view at this line, for the margin: quantity, torque and setting, waiting time. */
  readonly figures: readonly Line[]
  readonly note?: Line
}

/** Lines to write on by hand. */
export interface CardBlanks {
  readonly kind: 'blanks'
  readonly heading?: Line
  readonly fields: readonly { readonly label: string; readonly choices?: readonly string[] }[]
}

/** All about one gearcase on a wall card: quantity, oil and level, then a row for each plug, cover or shield. */
export interface CardPanel {
  readonly kind: 'panel'
  readonly name: Line
  /** From the ground or on stands. */
  readonly access: Line
  readonly quantity: Line
  readonly oil: Line
  /** Other figures, the level, the breather, and the order of loosening and tightening. */
  readonly notes: readonly Line[]
  readonly columns: { readonly tool: string; readonly manual: string; readonly setting: string }
  readonly rows: readonly PanelRow[]
  /** The case with its plugs, or a wheel with its mark. */
  readonly drawings: readonly CardPicture[]
}

export interface PanelRow {
  /** The letter and number of the part on this card, such as `F1`. */
  readonly mark: Line
  readonly name: Line
  readonly tool: Line
  readonly toolForm: Line
  readonly manual: Line
  readonly manualNotes: Line
  /** Empty without a wrench. */
  readonly setting: Line
  readonly wrench: Line
  /** Seals and place. */
  readonly notes: readonly Line[]
}

/** A drawing from figures. `text` has all its values, for Markdown, plain text and readers who cannot see it. */
export interface CardPicture {
  readonly kind: 'picture'
  readonly name: Line
  readonly drawing: CardDrawing
  readonly text: readonly Line[]
}

/** The figures of a drawing, as numbers; texts in it are labels. */
export type CardDrawing =
  | CaseDrawing
  | WheelDrawing
  | BoltsDrawing
  | {
      readonly kind: 'scale'
      readonly scale: Pick<WrenchScale, 'lowest' | 'highest' | 'graduation'>
      readonly settings: readonly { readonly label: string; readonly value: number }[]
    }
  | {
      readonly kind: 'pour'
      /** The clock at the start of each bar. */
      readonly start: string
      /** One bar for each temperature. */
      readonly bars: readonly {
        readonly label: string
        /** The ends of the parts in seconds, with their clock times; absent: not known. */
        readonly ends?: readonly { readonly seconds: number; readonly clock: string }[]
        /** The label at the end of a bar. */
        readonly end: string
      }[]
    }
  | {
      readonly kind: 'jug'
      /** In the unit of the jug. */
      readonly size: number
      readonly graduation: number
      readonly marks: readonly { readonly value: number; readonly label: string }[]
    }
  | {
      readonly kind: 'true sizes'
      readonly checkLine: { readonly millimetres: number; readonly label: string }
      /** `beside`: small, so that a card of one gearcase stays on one page. `below`: large, for a page of their own. */
      readonly labels: 'beside' | 'below'
      /** In millimetres. */
      readonly shapes: readonly ({ readonly labels: readonly string[] } & (
        | { readonly kind: 'ring'; readonly insideDiameter: number; readonly outsideDiameter: number }
        | { readonly kind: 'hexagon'; readonly acrossFlats: number }
      ))[]
    }

/** A gearcase seen from one side. */
export interface CaseDrawing {
  readonly kind: 'case'
  /** The ends of the machine to the left and right of the reader. */
  readonly ends: readonly [left: string, right: string]
  readonly parts: readonly {
    readonly label: string
    /** On the face that is seen, behind it, or on an edge of the outline. */
    readonly at: 'face' | 'behind' | 'top' | 'bottom' | 'left' | 'right'
    /** From -1 (left) to 1 (right), and from -1 (high) to 1 (low). */
    readonly x: number
    readonly y: number
    readonly isBreather: boolean
  }[]
}

/** A wheel with its mark for each use of an opening that turns with it. */
export interface WheelDrawing {
  readonly kind: 'wheel'
  readonly positions: readonly { readonly label: string; readonly mark: WheelMark }[]
}

/** The bolts of a cover in the order of tightening: on a circle, or in two rows from the middle outwards. */
export interface BoltsDrawing {
  readonly kind: 'bolts'
  /** The number of each bolt in the order; on a circle clockwise from the top, in rows from left to right. */
  readonly numbers: readonly number[]
  readonly layout: 'circle' | 'two rows'
}

export type CardPart =
  | CardTable
  | CardList
  | CardFigurePanel
  | CardSteps
  | CardBlanks
  | CardPanel
  | CardPicture
  | CardScenes
/** The scenes of a cue sheet, with the words above the columns. */
export interface CardScenes {
  readonly kind: 'scenes'
  readonly columns: {
    readonly show: string
    readonly say: string
    readonly screen: string
    readonly hold: string
  }
  readonly scenes: readonly CardScene[]
}

export interface CardScene {
  readonly number: number
  readonly title: Line
  /** Speaking time. */
  readonly time: string
  /** `mark`: why the shot cannot be repeated, or that a wait after it is cut. */
  readonly shots: readonly { readonly text: string; readonly marks: readonly string[] }[]
  readonly say: readonly { readonly text: string; readonly isCaution: boolean }[]
  readonly screen: readonly Line[]
  /** Cautions to keep on the screen. */
  readonly hold: readonly CardCaution[]
}

export type PictureName = 'washer' | 'wheel marks' | 'pour'

export interface CardSection {
  readonly id: CardSectionId | SlipSectionId | WallSectionId | PaperSectionId
  readonly heading: string
  readonly parts: readonly CardPart[]
}

/** The papers beside the card and the slip. A label has two orientations. */
export type Paper = 'cues' | 'record' | 'label' | 'label-upright' | 'chart' | 'picks' | 'differences'

/** A card in one language, with a pointer for every figure. */
export interface CardModel {
  readonly kind: 'service-card'
  readonly version: '1.0'
  readonly language: string
  readonly direction: 'ltr' | 'rtl'
  /**
   * `slip` and `wall` are the owner's slip and the wall card, made from their own data instead of a plan; so are other
   * papers.
   */
  readonly extent: 'full' | 'short' | 'slip' | 'wall' | Paper
  readonly title: string
  /** The title of the short card. */
  readonly shortTitle: string
  readonly machine: Line
  readonly about: Line
  /** The header of the sheet, such as a note that its data are invented. */
  readonly header?: Line
  readonly variant: { readonly known: boolean; readonly label: string; readonly lines: readonly Line[] }
  /** `large`: what the reader looks for first. */
  readonly facts: readonly { readonly label: string; readonly value: Line; readonly large?: true }[]
  /** Sentences about priority over this card: the manual, local codes, licences. */
  readonly authority: readonly string[]
  readonly cautions: { readonly label: string; readonly cautions: readonly CardCaution[] }
  readonly sections: readonly CardSection[]
  /** Words for the drawings. */
  readonly marks: {
    readonly computed: string
    /** Opens the full text of a short line. */
    readonly inFull: string
    readonly pictures: Readonly<Record<PictureName, string>>
    /** The legend of a torque drawing. */
    readonly legend: { readonly allowed: string; readonly trueBand: string; readonly setting: string }
    /** What stands between a label and its value, if it is not `: `, such as a colon after a no-break space. */
    readonly colon?: string
    /** The same for `; `. */
    readonly semicolon?: string
  }
}
