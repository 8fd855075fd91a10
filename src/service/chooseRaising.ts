import type { VisitFacts } from './requireVisit.js'

/** Ramps are used only if the toolbox has no stands and the manual permits ramps for every axle. */
export function chooseRaising({ sheet, toolbox }: Pick<VisitFacts, 'sheet' | 'toolbox'>): 'stands' | 'ramps' {
  const hasOnlyRamps =
    toolbox !== undefined &&
    Object.keys(toolbox.stands).length === 0 &&
    Object.keys(toolbox.ramps ?? {}).length > 0
  return hasOnlyRamps && Object.values(sheet.machine.axles).every(({ ramps }) => ramps === true)
    ? 'ramps'
    : 'stands'
}
