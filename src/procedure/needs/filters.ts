import { isFilterRenewed } from '../../spec/index.js'
import {
  coverAt,
  draftAt,
  draftDrain,
  draftHere,
  filterAt,
  gearcaseAt,
  type Need,
  noneOf,
  openingAt,
} from '../stepContext.js'

/** A filter comes off an empty case, is looked into, and is back before what is in front of it closes. */
export const FILTER_NEEDS = {
  'filter-before-drain': ({ state, self }) =>
    self === undefined || gearcaseAt(state, self).oil !== 'old' || draftDrain(self),
  'filter-not-reached': ({ state, filter, instance }) => {
    const behind = filter?.behind
    if (behind === undefined) return true
    if ('opening' in behind)
      return openingAt(state, behind, instance).position === 'out' || draftAt('take out', behind, instance)
    return coverAt(state, behind, instance).position === 'off' || draftAt('take off cover', behind, instance)
  },
  'filter-not-inspected': (context) => {
    const { state, filter, instance } = context
    if (filter === undefined || filterAt(state, filter, instance).inspected) return true
    return [draftHere(context, 'inspect the filter')]
  },
  'filter-not-cleaned': (context) => {
    const { state, filter, instance } = context
    if (filter === undefined || isFilterRenewed(filter.filter)) return true
    return filterAt(state, filter, instance).cleaned || [draftHere(context, 'clean the filter')]
  },
  'filter-left-out': ({ state, gearcase, opening, cover, instance }) => {
    const closing = opening?.path ?? cover?.path
    const out = (gearcase?.filters ?? []).filter(
      (one) => one.behind?.path === closing && filterAt(state, one, instance).position === 'off',
    )
    return noneOf(out.flatMap((one) => draftAt('fit filter', one, instance)))
  },
} satisfies Readonly<Record<string, Need>>
