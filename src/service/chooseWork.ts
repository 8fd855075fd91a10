import type { Id, SpecSheet } from '../spec/index.js'
import { listSatisfyingServices } from './gearcases.js'
import type { ServiceDue } from './listDue.js'

const DUE_VERDICTS: ReadonlySet<string> = new Set(['overdue', 'due', 'due soon'])

/**
 * Chooses the work of a visit from the list of services: those that are overdue, due or due soon, or the
 * named ones with any verdict. Work that another chosen service includes, such as a level check by an oil
 * change, is omitted. If services include each other, the first is chosen.
 * @returns for each line, whether it is chosen, and the name of the chosen service that includes it
 */
export function chooseWork(
  sheet: SpecSheet,
  due: readonly ServiceDue[],
  services: readonly Id[] | 'due',
): readonly { readonly taken: boolean; readonly coveredBy?: string }[] {
  const requestedLines = due.map(({ service, verdict }) =>
    services === 'due' ? DUE_VERDICTS.has(verdict) : services.includes(service),
  )
  const includesWork = (other: ServiceDue, line: ServiceDue): boolean =>
    other.gearcase === line.gearcase &&
    other.part.instance?.id === line.part.instance?.id &&
    listSatisfyingServices(sheet, line.service).includes(other.service)
  const taken = due.map(
    (line, place) =>
      requestedLines[place] === true &&
      !due.some(
        (other, otherPlace) =>
          requestedLines[otherPlace] === true &&
          includesWork(other, line) &&
          (otherPlace < place || !includesWork(line, other)),
      ),
  )
  return due.map((line, place) => {
    if (taken[place] === true) return { taken: true }
    const coveredBy = due.find((other, at) => taken[at] === true && includesWork(other, line))?.serviceName
    return { taken: false, ...(coveredBy === undefined ? {} : { coveredBy }) }
  })
}
