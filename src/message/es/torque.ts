import type { Param } from '../../base/index.js'
import type { TorqueWrench } from '../../spec/index.js'
import type { TorqueCodes } from '../../torque/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeUnitName } from '../phrases.js'
import { writeDigits } from './words.js'

type BandEnds = { min: Param; max: Param }

function writeBand({ min, max }: BandEnds, say: Say): string {
  return `${say.quantity(min)} a ${say.quantity(max)}`
}

type ErrorBase = TorqueCodes['torque/actual-torque-in-band']['of']
const ERROR_BASES: Readonly<Record<ErrorBase, string>> = {
  reading: 'de la lectura',
  'full scale': 'del fondo de escala',
}

function writeError(percent: number, of: ErrorBase, say: Say): string {
  return `±${say.number(percent)} % ${nameOf(ERROR_BASES, of)}`
}

const writeTurnsWord = (turns: string) => (Number(turns) === 1 ? 'vuelta' : 'vueltas')

function turnsText(min: string, max?: string): string {
  return max === undefined
    ? `al menos ${writeDigits(min)} ${writeTurnsWord(min)}`
    : `${writeDigits(min)} a ${writeDigits(max)} ${writeTurnsWord(max)}`
}

function writeAngle(
  { nominal, min, max }: { nominal?: string; min?: string; max?: string },
  say: Say,
): string {
  const writeDegrees = (value: string) => say.quantity({ value, unit: 'deg' })
  if (nominal !== undefined) return writeDegrees(nominal)
  if (min !== undefined && max !== undefined) return `${writeDegrees(min)} a ${writeDegrees(max)}`
  if (min !== undefined) return `al menos ${writeDegrees(min)}`
  return max === undefined ? '–' : `como máximo ${writeDegrees(max)}`
}

function writeNearestMarks(below: Param | undefined, above: Param | undefined, say: Say): string {
  const marks = [below, above].flatMap((mark) => (mark === undefined ? [] : [say.quantity(mark)]))
  return marks.length === 0 ? '' : ` Marcas más cercanas: ${say.list(marks)}.`
}

const WRENCH_TYPES: Readonly<Record<TorqueWrench['type'], string>> = {
  click: 'de disparo',
  dial: 'de cuadrante',
  beam: 'de aguja',
  electronic: 'electrónica',
}

const LIMIT_NAMES: Readonly<Record<TorqueCodes['torque/one-limit-only']['which'], string>> = {
  minimum: 'mínimo',
  maximum: 'máximo',
}

export const torqueTexts: Texts<TorqueCodes> = {
  'torque/setting-chosen': ({ setting, aim, from }, say) =>
    `Ajustar a ${say.quantity(setting)}: la marca dentro del margen más cercana ${from === 'nominal' ? 'al nominal' : 'a su centro'}, ${say.quantity(aim)}.`,
  'torque/nearest-mark': ({ setting, nominal, percent }, say) => {
    const difference = Math.abs(percent) < 0.05 ? 'menos de 0,1' : say.number(Math.abs(percent), 1)
    return `Ajustar a ${say.quantity(setting)}: la marca más cercana, ${difference} % por ${percent < 0 ? 'debajo' : 'encima'} del valor del manual, ${say.quantity(nominal)}.`
  },
  'torque/actual-torque-in-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Con ${writeError(percent, of, say)}, el par real es de ${writeBand(trueBand, say)}, dentro de ${writeBand(stated, say)}.`,
  'torque/actual-torque-out-of-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Con ${writeError(percent, of, say)}, el par real puede ser de ${writeBand(trueBand, say)}, fuera de ${writeBand(stated, say)}. Usar una llave más exacta.`,
  'torque/low-on-scale': ({ setting, highest, sharePercent }, say) =>
    `${say.quantity(setting)} es solo el ${say.number(sharePercent, 1)} % del fondo de escala (${say.quantity(highest)}). Si es posible, usar una llave más pequeña.`,
  'torque/below-lowest-mark': ({ required, lowest }, say) =>
    `${say.quantity(required)} está por debajo de la marca más baja de la llave, ${say.quantity(lowest)}.`,
  'torque/below-fifth-of-scale': ({ required, from, highest }, say) =>
    `${say.quantity(required)} está por debajo de ${say.quantity(from)}, el 20 % del fondo de escala (${say.quantity(highest)}).`,
  'torque/below-declared-range': ({ required, from }, say) =>
    `${say.quantity(required)} está por debajo del margen declarado de la llave, que empieza en ${say.quantity(from)}.`,
  'torque/above-highest-mark': ({ required, highest }, say) =>
    `${say.quantity(required)} está por encima de la marca más alta de la llave, ${say.quantity(highest)}.`,
  'torque/above-declared-range': ({ required, to }, say) =>
    `${say.quantity(required)} está por encima del margen declarado de la llave, que acaba en ${say.quantity(to)}.`,
  'torque/no-mark-in-band': ({ band: { min, max }, below, above, unit, error: wrenchError }, say) =>
    min.value === max.value
      ? `${
          wrenchError === undefined
            ? `La llave no tiene ninguna marca en ${say.quantity(min)}.`
            : `Ninguna marca de la escala en ${writeUnitName(unit, say)} de la llave está dentro de su error (${writeError(wrenchError.percent, wrenchError.of, say)}) respecto a ${say.quantity(min)}.`
        }${writeNearestMarks(below, above, say)} Si se permite un error mayor, darlo como tolerancia (tolerancePercent, --tolerance).`
      : `Ninguna marca de la escala en ${writeUnitName(unit, say)} de la llave está dentro de ${writeBand({ min, max }, say)}.${writeNearestMarks(below, above, say)}`,
  'torque/resolution-too-coarse': ({ required, from, step }, say) =>
    `A ${say.quantity(required)}, el paso de ${say.quantity(step)} del indicador es más de un cuarto del error permitido. Usar esta llave solo desde ${say.quantity(from)}.`,
  'torque/error-as-large-as-setting': ({ required, error: size }, say) =>
    `El error de la llave es un porcentaje del fondo de escala: ${say.quantity(size)}, tan grande como ${say.quantity(required)}. Usar una llave más pequeña.`,
  'torque/band-not-stated': ({ nominal }, say) => `El manual da ${say.quantity(nominal)} sin tolerancia.`,
  'torque/tolerance-from-caller': ({ nominal, percent, band: result }, say) =>
    `El manual da ${say.quantity(nominal)} sin tolerancia; con ±${say.number(percent)} % resulta ${writeBand(result, say)}. Esta tolerancia no es del manual: es de quien la pide.`,
  'torque/one-limit-only': ({ limit, which }, say) =>
    `El manual da solo un par ${nameOf(LIMIT_NAMES, which)}, ${say.quantity(limit)}: no se puede elegir ningún ajuste. Ver el manual.`,
  'torque/band-empty': ({ band: { min, max } }, say) =>
    `El mínimo ${say.quantity(min)} supera el máximo ${say.quantity(max)}. Corregir la hoja de datos.`,
  'torque/not-stated': () => 'La hoja de datos no indica ningún par. Ver el manual.',
  'torque/by-turns': ({ min, max }) =>
    `Apretar por vueltas, no por par: ${turnsText(min, max)} después del apriete a mano.`,
  'torque/angle-after-torque': ({ angle: size }, say) =>
    `Después del par, girar además ${writeAngle(size, say)}. Una llave dinamométrica no mide el ángulo.`,
  'torque/iso-figure-unknown': ({ type }) =>
    `No se conoce el error permitido por ISO 6789 para una llave ${nameOf(WRENCH_TYPES, type)}. Anotar en la caja de herramientas la exactitud del fabricante, en tanto por ciento.`,
  'torque/stage': ({ stage, stages, reason }, say) =>
    `Etapa ${say.number(stage)} de ${say.number(stages)}: ${say.reason(reason)}`,
  'torque/adaptor-changes-setting': ({ setting, torque, ratio }, say) =>
    `Con el adaptador, ajustar a ${say.quantity(setting)} para obtener ${say.quantity(torque)} en el tornillo (factor ${say.number(ratio, 4)}).`,
  'torque/extension-missing': () =>
    'Falta la longitud del adaptador, así que el ajuste no se puede corregir. Medir desde el centro del cuadrado de arrastre hasta el centro del tornillo.',
  'torque/lever-length-missing': ({ extension }, say) =>
    `Falta la longitud de la llave, así que el ajuste no se puede corregir para un adaptador de ${say.quantity(extension)}. Medir desde el centro del cuadrado de arrastre hasta la mitad de la empuñadura.`,
  'torque/drive-does-not-reach': ({ wrench, required }) =>
    `La llave tiene un cuadrado de arrastre de ${wrench}, el vaso necesita ${required}, y en la caja de herramientas no hay adaptador que los una.`,
  'torque/usual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} es usual para un tapón ${thread} (${writeBand(usual, say)}).`,
  'torque/unusual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} no es usual para un tapón ${thread} (${writeBand(usual, say)}).`,
  'torque/unit-slip': ({ torque, factor, becomes, meant }, say) =>
    `${say.quantity(torque)} ${writeDigits(factor)} serían ${say.quantity(becomes)}, un valor usual.${meant === undefined ? '' : ` ¿Se quería decir ${say.quantity({ value: torque.value, unit: meant })}?`} Comprobar el manual.`,
  'torque/thread-missing': () =>
    'La hoja de datos no indica la rosca, así que el par no se puede comparar con los valores usuales.',
  'torque/thread-unreadable': ({ thread }) =>
    `Rosca desconocida “${thread}”, así que el par no se puede comparar con los valores usuales.`,
  'torque/swapped-torques-fit-better': ({ fill, drain, fillThread, drainThread }, say) =>
    `Tapón de llenado ${fillThread} ${say.quantity(fill)}, tapón de drenaje ${drainThread} ${say.quantity(drain)}: intercambiados irían mejor con sus roscas. Comprobar el manual.`,
  'torque/plugs-not-swapped': ({ fill, drain }, say) =>
    `Tapón de llenado ${say.quantity(fill)} y tapón de drenaje ${say.quantity(drain)}: nada indica que estén intercambiados.`,
  'torque/same-plug-figures': ({ fillThread, drainThread }) =>
    `El tapón de llenado ${fillThread} y el tapón de drenaje ${drainThread} suelen llevar el mismo par, así que un intercambio no se notaría.`,
  'torque/class-unknown': ({ propertyClass }) =>
    `No se conoce la tensión de prueba de la clase “${propertyClass}”.`,
  'torque/class-not-for-size': ({ propertyClass, thread, from, to }) =>
    `La tensión de prueba de la clase ${propertyClass} se conoce de ${from} a ${to}; ${thread} no es una de sus medidas.`,
  'torque/class-not-for-thread': ({ propertyClass, thread }) =>
    `La clase ${propertyClass} no se aplica a ${thread}: una es métrica y la otra en pulgadas.`,
  'torque/proof-load': ({ stressMPa, area, load }, say) =>
    `Carga de prueba ${say.quantity(load)}: ${say.number(stressMPa, 0)} MPa en ${say.number(area, 1)} mm².`,
  'torque/clamp-load': ({ torque, nutFactor, force }, say) =>
    `${say.quantity(torque)} con factor de tuerca ${say.number(nutFactor)} da una fuerza de apriete de aprox. ${say.quantity(force)}.`,
  'torque/above-proof': ({ max, proof }, say) =>
    `Con la dispersión, la fuerza de apriete puede llegar a ${say.quantity(max)}, por encima de la carga de prueba de ${say.quantity(proof)}.`,
  'torque/below-proof': ({ max, proof }, say) =>
    `Incluso con la dispersión, la fuerza de apriete es como máximo de ${say.quantity(max)}, no por encima de la carga de prueba de ${say.quantity(proof)}.`,
  'torque/cycles-used-up': ({ used, limit }, say) =>
    `${say.number(used)} de ${say.number(limit)} ciclos usados: enviar la llave a calibrar.`,
  'torque/cycles-left': ({ used, limit }, say) =>
    `${say.number(used)} de ${say.number(limit)} ciclos usados.`,
  'torque/cycles-not-counted': ({ limit }, say) =>
    `Los ciclos de esta llave no se cuentan (límite ${say.number(limit)}); decide el límite de calendario.`,
  'torque/calibration-date-missing': () =>
    'Falta la fecha de la última calibración. Anotarla en la caja de herramientas.',
  'torque/by-torque': () => 'La hoja de datos indica un par, no vueltas.',
  'torque/turns': ({ min, max }) => `Apretar ${turnsText(min, max)} después del apriete a mano.`,
  'torque/turns-without-maximum': ({ min }) =>
    `Apretar ${turnsText(min)} después del apriete a mano; el manual no da máximo.`,
  'torque/turns-correct': ({ turns: done, min, max }, say) =>
    `${say.count(done, 'vuelta', 'vueltas')}: correcto (${turnsText(min, max)}).`,
  'torque/turns-too-few': ({ turns: done, min }, say) =>
    `${say.count(done, 'vuelta', 'vueltas')}: pocas; el manual dice al menos ${writeDigits(min)}.`,
  'torque/turns-too-many': ({ turns: done, max }, say) =>
    `${say.count(done, 'vuelta', 'vueltas')}: demasiadas; el manual dice como máximo ${writeDigits(max)}. Buscar una grieta antes de volver a usar la pieza.`,
  'torque/setting-not-a-mark': ({ set, below, above }, say) =>
    `Esta llave no tiene ninguna marca en ${say.quantity(set)}.${writeNearestMarks(below, above, say)}`,
}
