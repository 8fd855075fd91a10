import { isFilterRenewed } from '../../spec/index.js'
import {
  draftAt,
  draftDraining,
  draftForSamePart,
  getCoverState,
  getFilterState,
  getGearcaseState,
  getOpeningState,
  metIfEmpty,
  type Need,
} from '../stepContext.js'

/** Preconditions of filter work: removal after draining, inspection, and refitting before the plug or cover in front. */
export const FILTER_NEEDS = {
  'filter-before-drain': ({ state, target }) =>
    target === undefined || getGearcaseState(state, target).oil !== 'old' || draftDraining(target),
  'filter-not-reached': ({ state, filter, instance }) => {
    const behind = filter?.behind
    if (behind === undefined) return true
    if ('opening' in behind)
      return (
        getOpeningState(state, behind, instance).position === 'out' || draftAt('take out', behind, instance)
      )
    return (
      getCoverState(state, behind, instance).position === 'off' || draftAt('take off cover', behind, instance)
    )
  },
  'filter-not-inspected': (context) => {
    const { state, filter, instance } = context
    if (filter === undefined || getFilterState(state, filter, instance).inspected) return true
    return [draftForSamePart(context, 'inspect the filter')]
  },
  'filter-not-cleaned': (context) => {
    const { state, filter, instance } = context
    if (filter === undefined || isFilterRenewed(filter.filter)) return true
    return getFilterState(state, filter, instance).cleaned || [draftForSamePart(context, 'clean the filter')]
  },
  'filter-left-out': ({ state, gearcase, opening, cover, instance }) => {
    const closedPath = opening?.path ?? cover?.path
    const removedFilters = (gearcase?.filters ?? []).filter(
      (filter) =>
        filter.behind?.path === closedPath && getFilterState(state, filter, instance).position === 'off',
    )
    return metIfEmpty(
      removedFilters.flatMap((removedFilter) => draftAt('fit filter', removedFilter, instance)),
    )
  },
} satisfies Readonly<Record<string, Need>>
