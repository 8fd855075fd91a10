import type { SpecSheet } from '../spec/index.js'
import type { ListedDue } from './listDue.js'
import { listServicesThatSatisfy } from './listServicesThatSatisfy.js'

/** The chosen service that does another one of the same gearcase and instance on the way, by its name. */
export function findCovering(
  sheet: SpecSheet,
  line: ListedDue,
  chosen: readonly ListedDue[],
): string | undefined {
  if (chosen.includes(line)) return undefined
  const satisfying = listServicesThatSatisfy(sheet, line.service)
  return chosen.find(
    ({ service, gearcase, part }) =>
      satisfying.includes(service) &&
      gearcase === line.gearcase &&
      part.instance?.id === line.part.instance?.id,
  )?.serviceName
}
