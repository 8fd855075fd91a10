import { NOTATION_NAMES, type NotationName, readNotation } from '../notation/support/byName.js'

/** For each notation: the contents of a text, and one example. */
const TEXTS: Readonly<Record<NotationName, readonly [says: string, example: string]>> = {
  volume: [
    'A volume and its unit, other printed units in round brackets, the source in square ones',
    '450 mL (0.48 US qt) [p. 60]',
  ],
  length: [
    'A length and its unit, with tolerance or as a range, and the source in square brackets',
    '5 ± 1 mm [p. 60]',
  ],
  temperature: [
    'A temperature or a range with "to", and the source in square brackets',
    '-10 to 45 °C [p. 12]',
  ],
  mass: [
    'A mass and its unit, other printed units in round brackets, the source in square ones',
    '450 kg (992 lb) [p. 4]',
  ],
  minutes: ['A time in minutes, and the source in square brackets', '10 min [p. 60]'],
  tightening: [
    'Torque or turns, further stages after "then", the condition of the thread, and the source in square brackets',
    '30 N·m (22 lbf·ft), dry [p. 62]',
  ],
  oils: [
    'Oils with grade and category, separated by semicolons, each with its temperatures; the source in square brackets',
    'SAE 80W-90 GL-5, -10 to 45 °C; SAE 75W-90 GL-5 [p. 60]',
  ],
  seal: [
    'The form, material, kind and size of a seal, when it is replaced, its part number, and the source in square brackets',
    'flat copper crush washer 18 x 24 x 1.5 mm, every opening, part UM-2024 [p. 62]',
  ],
  interval: [
    'Hours, distance and period, separated by commas, and the source in square brackets',
    '200 h, 2000 km (1200 mi), 1 year [p. 31]',
  ],
  window: [
    'Hours, distance and period of a window, which may be zero, and the source in square brackets',
    '20 h, 1 month [p. 31]',
  ],
  place: [
    'Where the part is, in the words of the manual, and the source in square brackets',
    'left side of the housing, upper [p. 61]',
  ],
  position: [
    'The face of the gearcase, then left or right, front or rear, the height, the offset, and the source in square brackets',
    'bottom face, left, 60 mm [p. 61]',
  ],
  severeUse: [
    'A shorter interval or a factor, "when" and the criteria, and the source in square brackets',
    '100 h when working in water [p. 31]',
  ],
  access: ['"from the ground", or "raised on" with the ids of supports', 'raised on front-frame, rear-frame'],
  oilSpace: [
    '"shared with" and the id of the gearcase that owns the oil, and the portion in this one',
    'shared with axle, 1.5 L [p. 60]',
  ],
  fill: ['The refill, and the method that ends it', '700 mL (0.74 US qt), to level hole [p. 60]'],
  method: [
    'How the refill ends: by quantity, to level hole, dipstick or sight glass, at an opening',
    'to level hole at level, 5 mm below',
  ],
  level: [
    'The attitude, the engine, the temperature and the time at which the level is read',
    'level on its wheels, engine stopped, 40 °C, 10 min after stop',
  ],
  uses: [
    "The roles of an opening, and the position of the wheel's mark for each",
    'drain at mark down, fill at mark level',
  ],
  emptying: [
    'How the old oil gets out: drain, cover or suction, at an opening or a cover',
    'drain at front with rear',
  ],
  filterHold: [
    'What holds the filter: a cover, an opening, or its own thread with its tightening',
    'behind cover pan',
  ],
  drive: ['What turns the part, its size, and the source in square brackets', 'internal hex 10 mm [p. 62]'],
  fasteners: [
    'The number, thread and class, then what turns them and their tightening',
    '4 x M6 8.8, external hex 10 mm, 9 N·m, dry',
  ],
  bolts: [
    'The number, thread and class, then what turns them, their tightening and their order',
    '10 x M8 8.8, external hex 13 mm, 25 ± 3 N·m, dry, crosswise',
  ],
  condition: [
    'Variants, model years, serial numbers and markets; a machine must meet each of them',
    'model years 2019 to 2021, serial TS 00001 to 09999, market NO',
  ],
  variant: [
    'The name of the variant, and "when" with the condition that selects it',
    'Tind 4 S, short bed, when serial TS 00001 to 09999',
  ],
  support: [
    'The place of the stands, that of the jack, and the axle that is lifted',
    'front cross tube, jack under the hitch, lifts front',
  ],
  axle: ['The number of wheels', '2 wheels'],
  documentSource: [
    'The title, the kind of document, its edition and date',
    'Tind 4 workshop manual, workshop manual, edition 3, 2021-02-01',
  ],
  quantityWorkingTime: ['How long work took, in minutes or hours', '85 min'],
  quantityHours: ['Hours as the meter shows them', '512.6 h'],
  quantityDistance: ['A distance and its unit', '4410 km'],
  quantityVolume: ['A volume and its unit', '450 mL'],
  quantityTorque: ['A torque and its unit', '22.5 N·m'],
  sheetReference: ['The id of a sheet and its revision', 'hallbrekka-tind-4, revision 2023-03'],
  quantityLength: ['A length and its unit', '240 mm'],
  quantityMass: ['A mass and its unit', '1000 kg'],
  quantityViscosity: ['A kinematic viscosity', '135 mm²/s'],
  quantityDensity: ['A density', '890 kg/m³'],
  quantityCelsius: ['A temperature', '-27 °C'],
  readingsInKm: [
    'What the meters show on a day: hours, kilometres or both',
    '512.6 h, 4410 km on 2023-10-06',
  ],
  readingsInMi: ['What the meters show on a day: hours, miles or both', '512.6 h, 2740 mi on 2023-10-06'],
  event: ['An event, the gearcases that it concerns, and the day', 'submersion of front, rear on 2023-05-02'],
  topUp: ['A volume, the gearcase, the day and the oil', '50 mL in hub left on 2023-05-02, gear oil 80W-90'],
  pause: ['The first and the last day out of use', '2022-11-01 to 2023-03-31'],
  container: [
    'The number of full containers, what one holds, the label, the rest in an opened one, and the price',
    '2 x 1 US qt of 80W-90 GL-5, opened 300 mL, 9.5 EUR',
  ],
  label: ['The grade and the categories on the label', '80W-90 GL-5'],
  seals: [
    'The number of seals, what they are, and the price of one',
    '3 x flat copper crush washer 14 x 18 x 1.5 mm, part HB-1418',
  ],
  sealInStock: [
    'A seal, its size and its part number',
    'flat copper crush washer 14 x 18 x 1.5 mm, part HB-1418',
  ],
  price: ['A price and its currency', '9.5 EUR'],
  wrench: [
    'Scales, type, square drive, accuracy, length of the lever and calibration',
    '5–25 N·m by 0.5, click, 3/8 in, 4 % of reading, lever 240 mm, calibrated 2023-02-11',
  ],
  scale: ['The lowest and the highest mark, and the step between marks', '40–200 lbf·in by 1'],
  accuracy: ['"ISO 6789", or the per cent of the reading or of full scale', '4 % of reading'],
  socket: ['What it fits, the size, and the square drive of a socket or bit', 'internal hex 8 mm, 3/8 in'],
  vessel: [
    'The highest mark, the lowest if it is not the first step, and the step between marks',
    '700 mL by 10',
  ],
  stands: ['The number of stands, and the load of one', '2 x 1000 kg'],
  readings: ['What the meters show: hours, distance or both', '512.6 h, 4410 km'],
  entry: [
    'A service, "of" and its gearcase and instance; then, in this order, what is known of drained and refilled oil, findings, plugs and seals',
    'gear-oil-change of rear, 440 mL drained, 450 mL refilled, magnet clean, drain 22.5 N·m with small-click',
  ],
  oilUsed: [
    'The name of the oil, and "from" with the id of its container',
    'gear oil 80W-90 from quart-80w-90',
  ],
  tightened: [
    'A torque "with" the id of the wrench, turns, or words such as "by hand", and the position of the wheel',
    '22.5 N·m with small-click',
  ],
  sealDone: ['"new" or "inspected and used again", and the part number', 'new, part HB-1620'],
  filterDone: [
    '"new" or "cleaned", the part number, and what was found in it',
    'new, part RF-310, found fine paste',
  ],
  usedOil: [
    'A volume, "to" and who took the used oil, the receipt, and the fluid for which it is kept apart',
    '1.2 L to Nordfoss Collection, receipt K-1043',
  ],
  source: ['The id of a source, the page, and whether it is second hand or doubtful', 'p. 60'],
}

const BY_DEF: ReadonlyMap<string, NotationName> = new Map(
  NOTATION_NAMES.map((name) => [
    `text-${name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
    name,
  ]),
)

/** The contents of a text for an entry of `$defs`; undefined for another part of the schema. */
export function notationText(def: string): string | undefined {
  const name = BY_DEF.get(def)
  return name && `Short notation. ${TEXTS[name][0]}: \`${TEXTS[name][1]}\`.`
}

/** A text, and its full form. */
export function notationExamples(def: string): readonly [text: string, full: unknown] | undefined {
  const name = BY_DEF.get(def)
  if (name === undefined) return undefined
  const [, text] = TEXTS[name]
  const read = readNotation(name, text, (source) => source && { ref: 'manual', ...source })
  if (!read.ok) throw new Error(`${name}: ${text} cannot be read`)
  return [text, read.value]
}
