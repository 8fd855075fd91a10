import { isDate } from '../calendar/index.js'
import type { VisitRequest } from './planVisit.js'

/** Throws for a request that no programmer can have meant; what is wrong in documents is told in findings. */
export function checkVisitRequest(request: VisitRequest): void {
  if (typeof request !== 'object' || request === null) throw new TypeError('request must be an object')
  const { sheet, log, services, today, due, edition } = request
  if (typeof sheet !== 'object' || sheet === null || sheet.kind !== 'spec-sheet')
    throw new TypeError('request.sheet must be a spec sheet, as parseSpecSheet gives it')
  if (typeof log !== 'object' || log === null || log.kind !== 'machine-log')
    throw new TypeError('request.log must be a machine log, as parseMachineLog gives it')
  if (services !== 'due' && !(Array.isArray(services) && services.every((id) => typeof id === 'string')))
    throw new TypeError("request.services must be 'due' or a list of service ids")
  if (typeof today !== 'string' || !isDate(today))
    throw new RangeError(`request.today must be a date YYYY-MM-DD, got ${JSON.stringify(today)}`)
  if (typeof due !== 'object' || due === null) throw new TypeError('request.due must be the due options')
  if (edition !== '2017' && edition !== '2003')
    throw new RangeError(`request.edition must be '2017' or '2003', got ${JSON.stringify(edition)}`)
}
