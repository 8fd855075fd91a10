import type { NotationPart, SpecCodes } from '../../spec/index.js'
import { join } from '../phrases.js'

/** The parts of short notation, each with an example to copy (without no-break spaces). */
const PART_TEXTS: Readonly<Partial<Record<NotationPart, string>>> = {
  torque: 'a torque such as "30 N·m"',
  volume: 'a volume such as "450 mL"',
  length: 'a length such as "3 mm"',
  distance: 'a distance such as "2000 km"',
  mass: 'a mass such as "640 kg"',
  duration: 'a time such as "30 min"',
  temperature: 'a temperature such as "-10 to 45 °C"',
  angle: 'an angle such as "90°"',
  access: '"from the ground" or "raised on" with the ids of supports',
  accuracy: '"ISO 6789", or per cent such as "4 % of reading"',
  additive: '"plus 100 mL of limited-slip additive"',
  attitude: '"level on its wheels" or "level on stands"',
  condition: 'variants, model years, serial numbers or a market, such as "serial TS 00001 to 09999"',
  count: 'a number such as "2 x"',
  date: 'a day such as "2023-10-06"',
  drive: 'a drive such as "internal hex 8 mm"',
  emptying: '"drain at", "cover" or "suction at" with an id',
  event: 'an event such as "submersion"',
  factor: 'a factor such as "factor 0.5 when towing"',
  fasteners: 'fasteners such as "4 x M8, external hex 13 mm"',
  filter: '"behind opening" or "behind cover" with an id',
  'filter done': '"new" or "cleaned"',
  hours: 'hours such as "200 h"',
  id: 'an id',
  face: 'a face of the gearcase such as "bottom face, left"',
  label: 'the grade and categories of an oil such as "80W-90 GL-5"',
  'known source': 'also the id of a source, since the sheet has more than one: "[manual p. 60]"',
  'limited-slip': '"limited-slip required", "not permitted" or "either"',
  market: 'a market',
  method: '"by quantity", "to level hole", "dipstick screwed in", "dipstick resting" or "sight glass"',
  name: 'a name',
  oil: 'an oil such as "SAE 80W-90 GL-5", "ISO VG 220" or "maker fluid X"',
  'oil space': '"shared with" and the id of a gearcase',
  'pattern of bolts': '"crosswise", "from the middle outwards" or "in turn"',
  period: 'a period such as "12 months"',
  place: 'a position in words',
  price: 'a price such as "9.50 EUR"',
  replacement: '"every opening" or "on condition"',
  scale: 'marks and their step such as "40–200 lbf·in by 1"',
  seal: 'a seal such as "flat copper crush washer 20 x 24 x 1.5 mm"',
  'seal done': '"new" or "inspected and used again"',
  service: 'a service and its gearcase, such as "gear-oil-change of rear"',
  sheet: 'the id and revision of a sheet, such as "ferd-2, revision 3"',
  'shorter text': 'at most 300 characters; write longer ones in full',
  size: 'a size such as "20 x 24 x 1.5 mm"',
  source: 'a source such as "[p. 60]"',
  'square drive': 'a square drive such as "1/4 in"',
  support: 'a support point',
  'thread condition': '"dry", "oiled", "sealant", "anti-seize", "threadlocker" or "as supplied"',
  tightening:
    '"22 N·m with" and the id of a wrench, "1.5 turns", "by the manual", "by hand", "without a wrench", "not checked" or "not known"',
  title: 'the title of a manual',
  turns: 'turns such as "1 to 1.5 turns"',
  'type of wrench': '"click", "dial", "beam" or "electronic"',
  use: '"fill", "drain" or "level"',
  vessel: 'the highest mark and the step such as "700 mL by 10"',
  'wheel mark': '"mark down", "mark level" or "mark up"',
  wheels: 'a number such as "2 wheels"',
}

/** The message for a text that does not fit the notation. */
export function describeNotation({ found, expected, reason }: SpecCodes['spec/bad-notation']): string {
  const parts = expected.map((part) => PART_TEXTS[part] ?? part)
  const foundText = found === '' ? 'nothing' : `"${found}"`
  const reasonText = reason === undefined ? '' : (REASON_TEXTS[reason] ?? '')
  return parts.length === 0
    ? `Unexpected text ${foundText}.${reasonText}`
    : `Expected ${join(parts, 'or')}, found ${foundText}.${reasonText}`
}

const REASON_TEXTS: Readonly<Record<string, string>> = {
  'quantity/unit-is-ambiguous': ' The unit could mean two things: write the one you mean.',
  'quantity/ratio-of-units': ' This unit is a ratio; torque is force times length.',
  'quantity/unit-in-wrong-case': ' Upper and lower case change what this unit means.',
  'quantity/mass-unit-for-force': ' This is a unit of mass, not of force.',
  'quantity/unit-of-other-measure': ' This unit is for another kind of quantity.',
  'quantity/unit-is-missing': ' The unit is missing.',
  'quantity/unit-is-unknown': ' The unit is unknown.',
  'quantity/decimal-mark-is-unclear':
    ' The comma could mean decimals or thousands: write a decimal point and no thousands separator.',
}
