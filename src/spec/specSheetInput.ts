import type { JsonPointer } from '../base/index.js'
import type { Filter, FilterHold } from './filter.js'
import type {
  Cover,
  FastenerSet,
  Fill,
  FillMethod,
  Gearcase,
  Level,
  Opening,
  OwnOilSpace,
  Shield,
} from './gearcase.js'
import type { Condition, Leaf, LeafKind, Leaves } from './leaf.js'
import type {
  Intervals,
  Machine,
  Override,
  SecuredItem,
  Service,
  Source,
  SpecSheet,
  Waiver,
} from './specSheet.js'
import type { Id, SourceRef } from './specValue.js'

/** Parts whose `source` applies to the texts inside them. */
type SourcedPart = SpecSheet | Gearcase | Opening | Cover | Filter | Shield | Service
/** Parts that cannot be written as one text. */
type ObjectOnly = SpecSheet | Machine | Gearcase | Cover | Filter | Shield | SecuredItem | Waiver

/** The keys that may be omitted, as in the place table. The order matters: many parts have a name. */
type OmittedKeys<T> = T extends SpecSheet
  ? 'sources' | 'gearcases' | 'services'
  : T extends Machine
    ? 'variants' | 'axles' | 'supports'
    : T extends Source
      ? 'document'
      : T extends Gearcase
        ? 'name' | 'access' | 'oilSpace' | 'openings' | 'emptying'
        : T extends OwnOilSpace
          ? 'kind' | 'oils' | 'fill'
          : T extends Fill
            ? 'drainAndRefill' | 'method'
            : T extends FillMethod
              ? 'opening'
              : T extends Level
                ? 'attitude' | 'engine' | 'recheckAfterRun'
                : T extends Opening
                  ? 'name' | 'uses' | 'drive' | 'tightening' | 'seals' | 'place'
                  : T extends Cover
                    ? 'name' | 'bolts' | 'seal' | 'place'
                    : T extends Filter
                      ? 'name' | 'seals' | 'change' | 'place'
                      : T extends FilterHold
                        ? 'drive' | 'tightening'
                        : T extends Shield
                          ? 'name' | 'fasteners' | 'place'
                          : T extends Service
                            ? 'name' | 'task' | 'gearcases' | 'intervals'
                            : T extends Intervals
                              ? 'repeat' | 'countFrom'
                              : T extends FastenerSet
                                ? 'count' | 'drive' | 'tightening' | 'pattern'
                                : T extends { readonly with: Id }
                                  ? 'kind'
                                  : T extends { readonly name: string }
                                    ? 'name'
                                    : never

/** The values allowed at a key besides those of its own type. */
type ExtraInput<Key> = Key extends 'uses' | 'seals'
  ? string
  : Key extends 'instances'
    ? readonly Id[]
    : Key extends 'yellowMetal'
      ? boolean
      : never

type Part<T> = {
  readonly [Key in keyof T as Key extends OmittedKeys<T> ? never : Key]: Input<T[Key]> | ExtraInput<Key>
} & {
  readonly [Key in keyof T as Key extends OmittedKeys<T> ? Key : never]?: Input<T[Key]> | ExtraInput<Key>
} & (T extends SourcedPart ? { readonly source?: string } : unknown)

interface OverrideInput {
  readonly when: Condition | string
  /** A list of leaves, or leaves by path. */
  readonly set:
    | readonly {
        [K in LeafKind]: { readonly kind: K; readonly path: JsonPointer; readonly to: Leaves[K] | string }
      }[LeafKind][]
    | { readonly [path: JsonPointer]: Leaf | string }
  readonly source?: SourceRef | string
}

type Input<T> = T extends Leaf
  ? T | string
  : T extends Override
    ? OverrideInput
    : T extends readonly (infer Entry)[]
      ? readonly Input<Entry>[]
      : T extends object
        ? string extends keyof T
          ? { readonly [id: string]: Input<T[keyof T]> }
          : Part<T> | (T extends ObjectOnly ? never : string)
        : T

/**
 * A spec sheet as input: texts instead of leaves and parts are allowed, and omitted keys. Every `SpecSheet`
 * is valid input.
 */
export type SpecSheetInput = Part<SpecSheet>
