import { type FigureSlip, type Measure, type QuantityCodes, unitSymbol } from '../../quantity/index.js'
import type { Texts } from '../catalogue.js'
import { writeDigits } from './words.js'

const listSymbols = (candidates: readonly Parameters<typeof unitSymbol>[0][]): string[] =>
  candidates.map(unitSymbol)

export const quantityTexts: Texts<QuantityCodes> = {
  'quantity/text-is-empty': () => 'Se esperaba una cantidad y no hay nada.',
  'quantity/text-is-too-long': ({ length, longest }, say) =>
    `El texto tiene ${say.number(length)} caracteres; el límite es ${say.number(longest)}.`,
  'quantity/number-is-missing': ({ text }) => `Se esperaba primero un número; se encontró “${text}”.`,
  'quantity/superscript-digit': ({ text, without }) =>
    `“${text}” tiene una cifra en superíndice, que no es parte del número. Escribir “${without}”, y la nota al pie aparte.`,
  'quantity/number-is-unreadable': ({ text }) =>
    `Número ilegible en “${text}”. Escribir hasta nueve cifras, una marca decimal, hasta seis decimales y ningún cero inicial.`,
  'quantity/decimal-mark-is-unclear': ({ text, withPoint, withComma }) =>
    `“${text}” puede ser ${writeDigits(withPoint)} o ${writeDigits(withComma)}. Indicar si la marca decimal es la coma o el punto.`,
  'quantity/fraction-is-rounded': ({ text, value }) =>
    `La fracción en “${text}” no tiene decimal exacto; se usa ${writeDigits(value)}.`,
  'quantity/value-is-negative': ({ quantity }, say) =>
    `${say.quantity(quantity)} es negativo; solo una temperatura puede serlo.`,
  'quantity/limits-reversed': ({ min, max }) =>
    `El mínimo ${writeDigits(min)} supera el máximo ${writeDigits(max)}. Poner primero el menor.`,
  'quantity/unit-is-missing': ({ text }) => `No hay unidad en “${text}”. Escribir una, como 20 N·m.`,
  'quantity/unit-is-unknown': ({ text }) => `Unidad desconocida “${text}”.`,
  'quantity/unit-is-ambiguous': ({ text, candidates }, say) =>
    candidates.length === 1
      ? `“${text}” sola no es una unidad. ¿Se quería decir ${say.list(listSymbols(candidates))}?`
      : `“${text}” es ambigua: ${say.list(listSymbols(candidates))}. Escribir cuál de ellas es.`,
  'quantity/ratio-of-units': ({ text, candidates }, say) =>
    `“${text}” es una unidad dividida por otra; el par es fuerza por longitud. ¿Se quería decir ${say.list(listSymbols(candidates))}?`,
  'quantity/unit-in-wrong-case': ({ text, candidates }, say) =>
    `Las mayúsculas y minúsculas cambian el significado de “${text}”. ¿Se quería decir ${say.list(listSymbols(candidates))}?`,
  'quantity/mass-unit-for-force': ({ text, unit }) =>
    `“${text}” tiene una unidad de masa en lugar de fuerza; se lee como ${unitSymbol(unit)}.`,
  'quantity/unit-of-other-measure': ({ unit, measure }) =>
    `${unitSymbol(unit)} no es una unidad de ${MEASURE_NAMES[measure]}.`,
  'quantity/text-after-quantity': ({ text }) =>
    `Texto inesperado tras la cantidad: “${text}”. Escribir una sola cantidad.`,
  'quantity/printed-figures-differ-slightly': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)} difieren en ${say.number(missPercent, 2)} %. Comprobar el manual; uno de los dos puede ser una errata.`,
  'quantity/printed-figures-slip': ({ first, second, slip, ratio }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)} difieren en un factor de ${writeDigits(ratio)}: ${SLIP_NAMES[slip]}. Averiguar cuál es correcto antes de usarlos.`,
  'quantity/printed-figures-differ': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)} no pueden ser el mismo valor; difieren en ${say.number(missPercent, 2)} %. Comprobar el manual.`,
  'quantity/printed-figures-not-comparable': ({ first, second }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)} no son límites del mismo tipo, así que no se pueden comparar.`,
}

const SLIP_NAMES: Readonly<Record<FigureSlip, string>> = {
  'foot for inch': 'quizá se confundieron libras-pulgada y libras-pie',
  'kilogram-force for newton': 'quizá se confundieron kilogramo-fuerza y newton',
  'number copied between pound-foot and newton metre':
    'quizá un número en lbf·ft o N·m se copió sin convertir, o se convirtió dos veces',
  'US for imperial measure': 'quizá se confundieron medidas estadounidenses e imperiales',
  'US for imperial fluid ounce': 'quizá se confundieron onzas líquidas estadounidenses e imperiales',
}

export const MEASURE_NAMES: Readonly<Record<Measure, string>> = {
  torque: 'par',
  volume: 'volumen',
  length: 'longitud',
  distance: 'distancia',
  force: 'fuerza',
  pressure: 'presión',
  temperature: 'temperatura',
  temperatureDifference: 'diferencia de temperatura',
  mass: 'masa',
  duration: 'tiempo',
  angle: 'ángulo',
  speed: 'velocidad',
  kinematicViscosity: 'viscosidad cinemática',
  dynamicViscosity: 'viscosidad dinámica',
  density: 'densidad',
}
