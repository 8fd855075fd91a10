import type { Param } from '../../base/index.js'
import type { FillCodes } from '../../fill/index.js'
import type { FillMethod } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, nameOf } from '../phrases.js'
import { quote } from './words.js'

function writeLimits({ min, max }: { min?: Param; max?: Param }, say: Say): string {
  if (min === undefined) return `como máximo ${say.quantity(max)}`
  return max === undefined ? `al menos ${say.quantity(min)}` : `${say.quantity(min)} a ${say.quantity(max)}`
}

/** `0,09 L menos que` or `0,09 L más que`: a minus sign in a sentence is easily missed. */
function writeDifference(
  { value, unit }: FillCodes['fill/refill-level-decides']['difference'],
  say: Say,
): string {
  const size = { value: Math.abs(Number(value)), unit }
  return `${say.quantity(size)} ${Number(value) < 0 ? 'menos que' : 'más que'}`
}

const METHOD_NAMES: Readonly<Record<FillMethod['kind'], string>> = {
  'by quantity': 'la cantidad medida',
  'to level hole': 'el orificio de nivel',
  dipstick: 'la varilla de nivel',
  'sight glass': 'la mirilla',
  'not stated': 'el manual',
}

/** The inputs of a pouring time, as the caller writes them. */
const INPUT_NAMES: Readonly<Record<string, string>> = {
  volume: 'el volumen',
  kinematicViscosity: 'la viscosidad cinemática',
  'hose.bore': 'el diámetro interior de la manguera',
  'hose.length': 'la longitud de la manguera',
  'hose.drop': 'el desnivel de la manguera',
  'funnel.diameter': 'el diámetro del embudo',
  'funnel.depth': 'la profundidad del embudo',
}

export const fillTexts: Texts<FillCodes> = {
  'fill/hose-not-below-funnel': () =>
    'El extremo de la manguera no está por debajo del embudo, así que la manguera nunca se vacía. Subir el embudo.',
  'fill/drop-longer-than-hose': ({ drop, length }, say) =>
    `La manguera mide ${say.quantity(length)}, menos que su desnivel de ${say.quantity(drop)}. Corregir la caja de herramientas.`,
  'fill/bore-wider-than-funnel': ({ bore, diameter }, say) =>
    `El diámetro interior de la manguera, ${say.quantity(bore)}, no es menor que el diámetro del embudo, ${say.quantity(diameter)}. Corregir la caja de herramientas.`,
  'fill/measure-outside-range': ({ name, given, min, max }, say) =>
    `${capitalize(nameOf(INPUT_NAMES, name))} es ${say.quantity(given)}; el tiempo de vertido solo se puede calcular de ${say.quantity(min)} a ${say.quantity(max)}.`,
  'fill/flow-not-laminar': ({ reynolds, limit }, say) =>
    `El flujo puede no ser laminar (número de Reynolds ${say.number(reynolds, 0)}, límite ${say.number(limit)}), así que no se calcula el tiempo de vertido.`,
  'fill/entrance-longer-than-hose': ({ entrance, length }, say) =>
    `El flujo se estabiliza solo después de ${say.quantity(entrance)}, pero la manguera mide ${say.quantity(length)}, así que no se calcula el tiempo de vertido.`,
  'fill/funnel-too-small': ({ fillings, limit }, say) =>
    `El embudo tiene que llenarse ${say.count(fillings, 'vez', 'veces')} (límite ${say.number(limit)}), así que no se calcula el tiempo de vertido. Usar un embudo mayor.`,
  'fill/flow-laminar': ({ reynolds, limit }, say) =>
    `El flujo es laminar: número de Reynolds ${say.number(reynolds, 1)}, límite ${say.number(limit)}.`,
  'fill/kinetic-correction': ({ seconds }, say) =>
    `La aceleración y la entrada de la manguera añaden ${say.number(seconds, 1)} s.`,
  'fill/several-fillings': ({ fillings, funnel }, say) =>
    `En el embudo caben ${say.quantity(funnel)}; se llena ${say.count(fillings, 'vez', 'veces')}, cada vez después de vaciarse. Se vierte más rápido si se mantiene lleno.`,
  'fill/hose-never-full': ({ hose }, say) =>
    `En la manguera caben ${say.quantity(hose)}, más que la cantidad vertida, así que nunca se llena.`,
  'fill/wall-film-not-counted': () =>
    'No se incluye la película de aceite en el embudo y la manguera. Dejar que gotee.',
  'fill/fill-opening-closed': () =>
    'El tapón de llenado sigue puesto y no entra aire: no se calcula el tiempo de drenaje. Retirarlo.',
  'fill/drain-is-the-only-opening': () =>
    'El aire solo puede entrar por la abertura de drenaje: no se calcula el tiempo de drenaje.',
  'fill/breather-blocked': () => 'El respiradero está obstruido. Limpiarlo primero.',
  'fill/breather-not-checked': () => 'El respiradero no se ha comprobado. Comprobar que está libre.',
  'fill/drain-time-is-a-minimum': () => 'El tiempo de drenaje es un mínimo: ninguna caja drena más rápido.',
  'fill/wait-for-single-drips': () => 'Dejar drenar hasta que solo gotee.',
  'fill/no-containers': ({ short }, say) =>
    `No hay aceite adecuado en existencias. Conseguir ${say.quantity(short)}.`,
  'fill/opened-first': ({ container, taken }, say) =>
    `Usar primero ${say.quantity(taken)} del envase abierto ${quote(container)}.`,
  'fill/containers-left-over': ({ oil, left }, say) =>
    `En el último envase quedan ${say.quantity(left)} de ${oil}.`,
  'fill/containers-exact': ({ oil }) => `No sobra ${oil}.`,
  'fill/containers-short': ({ oil, short }, say) =>
    `No hay bastante ${oil} en existencias: faltan ${say.quantity(short)}. Comprarlo.`,
  'fill/containers-not-searched-fully': ({ tried }, say) =>
    `Hay demasiadas formas de combinar los envases: se usa la mejor de las primeras ${say.number(tried)}.`,
  'fill/other-oil-not-mixed': ({ oil, other }) => `${other} queda en existencias: no se mezcla con ${oil}.`,
  'fill/no-vessel': () => 'No hay jarra graduada. Conseguir una.',
  'fill/vessel-too-coarse': ({ vessel, error, tolerance }, say) =>
    `${quote(vessel)}: exactitud insuficiente; el error puede ser de ${say.quantity(error)} y el límite es ${say.quantity(tolerance)}.`,
  'fill/vessel-without-marks': ({ vessel }) =>
    `${quote(vessel)} no tiene marcas de graduación. Corregir la caja de herramientas.`,
  'fill/vessel-too-large': ({ vessel, lowestMark }, say) =>
    `La cantidad está por debajo de la marca más baja de ${quote(vessel)}, ${say.quantity(lowestMark)}.`,
  'fill/vessel-too-many-pours': ({ vessel, limit }, say) =>
    `${quote(vessel)}: habría que llenar más de ${say.count(limit, 'vez', 'veces')}.`,
  'fill/vessel-accurate-enough': ({ vessel, error, tolerance }, say) =>
    `${quote(vessel)} mide con un error de hasta ${say.quantity(error)}; el límite es ${say.quantity(tolerance)}.`,
  'fill/vessel-in-several-pours': ({ vessel, pours }, say) =>
    `Medir con ${quote(vessel)} en ${say.count(pours, 'vertido', 'vertidos')}.`,
  'fill/tolerance-not-stated': ({ error }, say) =>
    `El manual no indica tolerancia para el llenado. El mejor recipiente mide con un error de hasta ${say.quantity(error)}.`,
  'fill/no-pan': () => 'No hay bandeja de drenaje. Conseguir una.',
  'fill/pan-large-enough': ({ pan, total, size }, say) =>
    `En ${quote(pan)} caben ${say.quantity(size)}; en este servicio se drenan ${say.quantity(total)}.`,
  'fill/pan-nearly-full': ({ pan, percent }, say) =>
    `${quote(pan)} se llenará al ${say.number(percent)} %. Llevarla con cuidado o vaciarla entre drenajes.`,
  'fill/empty-pan-between-drains': ({ pan, total, size }, say) =>
    `En este servicio se drenan ${say.quantity(total)}; en ${quote(pan)} caben ${say.quantity(size)}. Vaciarla entre drenajes.`,
  'fill/pan-too-small': ({ largest, size }, say) =>
    `Se drenan ${say.quantity(largest)} de una vez; en la bandeja mayor caben ${say.quantity(size)}. Conseguir una mayor.`,
  'fill/refill-not-stated': () => 'La hoja de datos no indica la cantidad de llenado. Ver el manual.',
  'fill/refill-as-printed': ({ refilled, printed }, say) =>
    `Se llenó con ${say.quantity(refilled)}; el manual indica ${say.quantity(printed)}.`,
  'fill/refill-inside-band': ({ refilled, ...band }, say) =>
    `Se llenó con ${say.quantity(refilled)}; el manual permite ${writeLimits(band, say)}.`,
  'fill/refill-outside-band': ({ refilled, min, max }, say) =>
    `Se llenó con ${say.quantity(refilled)}; el manual permite ${writeLimits({ ...(min && { min }), ...(max && { max }) }, say)}. Corregir la cantidad.`,
  'fill/refill-band-not-stated': ({ refilled, printed, difference }, say) =>
    `Se llenó con ${say.quantity(refilled)}, ${writeDifference(difference, say)} los ${say.quantity(printed)} que el manual indica sin tolerancia.`,
  'fill/refill-level-decides': ({ difference, method }, say) =>
    Number(difference.value) === 0
      ? `Decide ${nameOf(METHOD_NAMES, method)}; se llenó con la cantidad indicada exacta.`
      : `Decide ${nameOf(METHOD_NAMES, method)}; se llenó con ${writeDifference(difference, say)} la cantidad indicada.`,
  'fill/refill-far-off': ({ difference, percent, limit }, say) =>
    `Parar: se llenó con ${writeDifference(difference, say)} la cantidad indicada (${say.number(percent, 0)} %; el límite es ${say.number(limit)} %). Comprobar que la máquina está nivelada y que no quedó aceite viejo dentro.`,
}
