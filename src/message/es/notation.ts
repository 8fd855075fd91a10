import type { NotationPart, SpecCodes } from '../../spec/index.js'
import { MEASURE_NAMES } from './quantity.js'
import { join } from './words.js'

/** The parts of short notation, each with an example to copy (without no-break spaces). */
const PART_TEXTS: Readonly<Record<NotationPart, string>> = {
  // Those that the notation has no form of its own for have their names.
  ...MEASURE_NAMES,
  torque: 'un par como "30 N·m"',
  volume: 'un volumen como "450 mL"',
  length: 'una longitud como "3 mm"',
  distance: 'una distancia como "2000 km"',
  mass: 'una masa como "640 kg"',
  duration: 'un tiempo como "30 min"',
  temperature: 'una temperatura como "-10 to 45 °C"',
  angle: 'un ángulo como "90°"',
  access: '"from the ground" o "raised on" con los ids de apoyos',
  accuracy: '"ISO 6789", o un tanto por ciento como "4 % of reading"',
  additive: '"plus 100 mL of limited-slip additive"',
  attitude: '"level on its wheels" o "level on stands"',
  condition: 'variantes, años de modelo, números de serie o un mercado, como "serial TS 00001 to 09999"',
  count: 'un número como "2 x"',
  date: 'un día como "2023-10-06"',
  drive: 'un accionamiento como "internal hex 8 mm"',
  emptying: '"drain at", "cover" o "suction at" con un id',
  event: 'un suceso como "submersion"',
  factor: 'un factor como "factor 0.5 when towing"',
  fasteners: 'tornillos como "4 x M8, external hex 13 mm"',
  filter: '"behind opening" o "behind cover" con un id',
  'filter done': '"new" o "cleaned"',
  hours: 'horas como "200 h"',
  id: 'un id',
  face: 'una cara de la caja como "bottom face, left"',
  label: 'el grado y las categorías de un aceite, como "80W-90 GL-5"',
  'known source': 'también el id de una fuente, ya que la hoja tiene más de una: "[manual p. 60]"',
  'limited-slip': '"limited-slip required", "not permitted" o "either"',
  market: 'un mercado',
  method: '"by quantity", "to level hole", "dipstick screwed in", "dipstick resting" o "sight glass"',
  name: 'un nombre',
  oil: 'un aceite como "SAE 80W-90 GL-5", "ISO VG 220" o "maker fluid X"',
  'oil space': '"shared with" y el id de una caja de engranajes',
  'pattern of bolts': '"crosswise", "from the middle outwards" o "in turn"',
  period: 'un período como "12 months"',
  place: 'una posición en palabras',
  price: 'un precio como "9.50 EUR"',
  replacement: '"every opening" o "on condition"',
  scale: 'marcas y su paso, como "40–200 lbf·in by 1"',
  seal: 'una junta como "flat copper crush washer 20 x 24 x 1.5 mm"',
  'seal done': '"new" o "inspected and used again"',
  service: 'un servicio y su caja, como "gear-oil-change of rear"',
  sheet: 'el id y la revisión de una hoja, como "ferd-2, revision 3"',
  'shorter text': 'como máximo 300 caracteres; los textos más largos, en forma completa',
  size: 'una medida como "20 x 24 x 1.5 mm"',
  source: 'una fuente como "[p. 60]"',
  'square drive': 'un cuadrado de arrastre como "1/4 in"',
  support: 'un punto de apoyo',
  'thread condition': '"dry", "oiled", "sealant", "anti-seize", "threadlocker" o "as supplied"',
  tightening:
    '"22 N·m with" y el id de una llave, "1.5 turns", "by the manual", "by hand", "without a wrench", "not checked" o "not known"',
  title: 'el título de un manual',
  turns: 'vueltas como "1 to 1.5 turns"',
  'type of wrench': '"click", "dial", "beam" o "electronic"',
  use: '"fill", "drain" o "level"',
  vessel: 'la marca más alta y el paso, como "700 mL by 10"',
  'wheel mark': '"mark down", "mark level" o "mark up"',
  wheels: 'un número como "2 wheels"',
}

/** The message for a text that does not fit the notation. */
export function describeNotation({ found, expected, reason }: SpecCodes['spec/bad-notation']): string {
  const parts = expected.map((part) => PART_TEXTS[part] ?? part)
  const foundText = found === '' ? 'no hay nada' : `se encontró "${found}"`
  const reasonText = reason === undefined ? '' : (REASON_TEXTS[reason] ?? '')
  return parts.length === 0
    ? `Texto inesperado: ${found === '' ? 'vacío' : `"${found}"`}.${reasonText}`
    : `Se esperaba ${join(parts, 'o')}; ${foundText}.${reasonText}`
}

const REASON_TEXTS: Readonly<Record<string, string>> = {
  'quantity/unit-is-ambiguous': ' La unidad puede significar dos cosas: escribir la correcta.',
  'quantity/ratio-of-units': ' Esta unidad es un cociente; el par es fuerza por longitud.',
  'quantity/unit-in-wrong-case': ' Las mayúsculas y minúsculas cambian el significado de esta unidad.',
  'quantity/mass-unit-for-force': ' Es una unidad de masa, no de fuerza.',
  'quantity/unit-of-other-measure': ' Esta unidad es de otro tipo de magnitud.',
  'quantity/unit-is-missing': ' Falta la unidad.',
  'quantity/unit-is-unknown': ' La unidad es desconocida.',
  'quantity/decimal-mark-is-unclear':
    ' La coma puede ser de decimales o de millares: escribir un punto decimal y ningún separador de millares.',
}
