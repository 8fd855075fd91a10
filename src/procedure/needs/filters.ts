import { isFilterRenewed } from '../../spec/index.js'
import {
  coverAt,
  draftAt,
  draftDrain,
  draftHere,
  filterAt,
  gearcaseAt,
  metIfNone,
  type Need,
  openingAt,
} from '../stepContext.js'

/** Needs for filters: removed after draining, inspected, and back before the plug or cover in front of them. */
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
    const closedPath = opening?.path ?? cover?.path
    const filtersOut = (gearcase?.filters ?? []).filter(
      (one) => one.behind?.path === closedPath && filterAt(state, one, instance).position === 'off',
    )
    return metIfNone(filtersOut.flatMap((one) => draftAt('fit filter', one, instance)))
  },
} satisfies Readonly<Record<string, Need>>
