import Qty from 'js-quantities'
import { unit as mathUnit } from 'mathjs'
import unitmath from 'unitmath'

/** The reading of a text by a general-purpose unit library: its value in base units, or `refused`. */
export interface OtherReadings {
  readonly mathjs: string
  readonly jsQuantities: string
  readonly unitmath: string
}

export function otherReadings(text: string): OtherReadings {
  return {
    mathjs: tryRead(() => mathUnit(text).toSI().format({ precision: 6 })),
    jsQuantities: tryRead(() => {
      const base = Qty(text).toBase()
      return `${Number(base.scalar.toPrecision(6))} ${base.units()}`
    }),
    unitmath: tryRead(() => unitmath(text).toSI().toString({ precision: 6 })),
  }
}

function tryRead(read: () => string): string {
  try {
    return read().replaceAll('|', '\\|')
  } catch (error) {
    // a missing method is our mistake, not a refusal
    if (error instanceof Error && / is not a function$/.test(error.message)) throw error
    return 'refused'
  }
}
