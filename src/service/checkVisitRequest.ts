import { shown } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { convert } from '../quantity/index.js'
import { requireDocument } from '../spec/index.js'
import type { VisitRequest } from './planVisit.js'

/** Throws for a request that no programmer can have meant; what is wrong in documents is told in findings. */
export function checkVisitRequest(request: VisitRequest): void {
  if (typeof request !== 'object' || request === null) throw new TypeError('request must be an object')
  const { sheet, log, services, toolbox, stock, today, ambient, due, edition, tolerancePercent } = request
  requireDocument('request.sheet', sheet, 'spec-sheet')
  requireDocument('request.log', log, 'machine-log')
  if (toolbox !== undefined) requireDocument('request.toolbox', toolbox, 'toolbox')
  if (stock !== undefined) requireDocument('request.stock', stock, 'stock')
  if (services !== 'due' && !(Array.isArray(services) && services.every((id) => typeof id === 'string')))
    throw new TypeError("request.services must be 'due' or a list of service ids")
  if (typeof today !== 'string' || !isDate(today))
    throw new RangeError(`request.today must be a date YYYY-MM-DD, got ${shown(today)}`)
  if (ambient !== undefined) checkAmbient(ambient)
  if (typeof due !== 'object' || due === null) throw new TypeError('request.due must be the due options')
  if (edition !== '2017' && edition !== '2003')
    throw new RangeError(`request.edition must be '2017' or '2003', got ${shown(edition)}`)
  if (tolerancePercent === undefined) return
  if (typeof tolerancePercent !== 'number') throw new TypeError('request.tolerancePercent must be a number')
  if (!(tolerancePercent > 0 && tolerancePercent < 100))
    throw new RangeError(`request.tolerancePercent is ${tolerancePercent}; it must be above 0 and below 100`)
}

function checkAmbient(ambient: NonNullable<VisitRequest['ambient']>): void {
  if (typeof ambient !== 'object' || ambient === null || typeof ambient.value !== 'number')
    throw new TypeError('request.ambient must be a temperature { value, unit } with a number')
  const { value, unit } = ambient
  if (unit !== 'degC' && unit !== 'degF' && unit !== 'K')
    throw new RangeError(`request.ambient.unit is ${shown(unit)}; it must be degC, degF or K`)
  const kelvin = Number.isFinite(value) ? convert(ambient, 'K').value : Number.NaN
  if (!(kelvin > 0 && kelvin < 1000))
    throw new RangeError(`request.ambient is ${value} ${unit}; it must be above 0 K and below 1000 K`)
}
