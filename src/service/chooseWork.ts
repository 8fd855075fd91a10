import type { Id, SpecSheet } from '../spec/index.js'
import { listServicesThatSatisfy } from './gearcases.js'
import type { ListedDue } from './listDue.js'

/** Verdicts that `'due'` selects. */
const DUE_VERDICTS: ReadonlySet<string> = new Set(['overdue', 'due', 'due soon'])

/**
 * Chooses the work of a visit from the list of due services: those in the state overdue, due or due soon, or
 * the named ones whatever their verdict. Work that another chosen one includes, such as a level check next to
 * a change of the same gearcase, is left out. Of services that each count as the other, the first on the list stays.
 * @returns for each line of the list, whether it is used, and the name of the chosen service that does it anyway
 */
export function chooseWork(
  sheet: SpecSheet,
  due: readonly ListedDue[],
  services: readonly Id[] | 'due',
): readonly { readonly taken: boolean; readonly coveredBy?: string }[] {
  const asked = due.map(({ service, verdict }) =>
    services === 'due' ? DUE_VERDICTS.has(verdict) : services.includes(service),
  )
  const covers = (other: ListedDue, line: ListedDue): boolean =>
    other.gearcase === line.gearcase &&
    other.part.instance?.id === line.part.instance?.id &&
    listServicesThatSatisfy(sheet, line.service).includes(other.service)
  const taken = due.map(
    (line, place) =>
      asked[place] === true &&
      !due.some(
        (other, otherPlace) =>
          asked[otherPlace] === true && covers(other, line) && (otherPlace < place || !covers(line, other)),
      ),
  )
  return due.map((line, place) => {
    if (taken[place] === true) return { taken: true }
    const coveredBy = due.find((other, at) => taken[at] === true && covers(other, line))?.serviceName
    return { taken: false, ...(coveredBy === undefined ? {} : { coveredBy }) }
  })
}
