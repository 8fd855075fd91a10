import type { NotationPart, SpecCodes } from '../../spec/index.js'
import { join } from '../phrases.js'
import { quote } from './words.js'

/** The parts of short notation, each with an example to copy (without no-break spaces). */
const PART_TEXTS: Readonly<Partial<Record<NotationPart, string>>> = {
  torque: 'un couple tel que "30 N·m"',
  volume: 'un volume tel que "450 mL"',
  length: 'une longueur telle que "3 mm"',
  distance: 'une distance telle que "2000 km"',
  mass: 'une masse telle que "640 kg"',
  duration: 'un temps tel que "30 min"',
  temperature: 'une température telle que "-10 to 45 °C"',
  angle: 'un angle tel que "90°"',
  access: '"from the ground" ou "raised on" avec les ids des supports',
  accuracy: '"ISO 6789", ou un pourcentage tel que "4 % of reading"',
  additive: '"plus 100 mL of limited-slip additive"',
  attitude: '"level on its wheels" ou "level on stands"',
  condition:
    'des variantes, années modèle, numéros de série ou un marché, par exemple "serial TS 00001 to 09999"',
  count: 'un nombre tel que "2 x"',
  date: 'un jour tel que "2023-10-06"',
  drive: 'une empreinte telle que "internal hex 8 mm"',
  emptying: '"drain at", "cover" ou "suction at" avec un id',
  event: 'un événement tel que "submersion"',
  factor: 'un facteur tel que "factor 0.5 when towing"',
  fasteners: 'des fixations telles que "4 x M8, external hex 13 mm"',
  filter: '"behind opening" ou "behind cover" avec un id',
  'filter done': '"new" ou "cleaned"',
  hours: 'des heures telles que "200 h"',
  id: 'un id',
  face: 'une face du carter telle que "bottom face, left"',
  label: 'le grade et les catégories d’une huile, par exemple "80W-90 GL-5"',
  'known source': 'aussi l’id d’une source, car la fiche en a plusieurs : "[manual p. 60]"',
  'limited-slip': '"limited-slip required", "not permitted" ou "either"',
  market: 'un marché',
  method: '"by quantity", "to level hole", "dipstick screwed in", "dipstick resting" ou "sight glass"',
  name: 'un nom',
  oil: 'une huile telle que "SAE 80W-90 GL-5", "ISO VG 220" ou "maker fluid X"',
  'oil space': '"shared with" et l’id d’un carter',
  'pattern of bolts': '"crosswise", "from the middle outwards" ou "in turn"',
  period: 'une durée telle que "12 months"',
  place: 'un emplacement en mots',
  price: 'un prix tel que "9.50 EUR"',
  replacement: '"every opening" ou "on condition"',
  scale: 'des repères et leur pas, par exemple "40–200 lbf·in by 1"',
  seal: 'un joint tel que "flat copper crush washer 20 x 24 x 1.5 mm"',
  'seal done': '"new" ou "inspected and used again"',
  service: 'un entretien et son carter, par exemple "gear-oil-change of rear"',
  sheet: 'l’id et la révision d’une fiche, par exemple "ferd-2, revision 3"',
  'shorter text': 'au plus 300 caractères ; écrire les textes plus longs en entier',
  size: 'une taille telle que "20 x 24 x 1.5 mm"',
  source: 'une source telle que "[p. 60]"',
  'square drive': 'un carré d’entraînement tel que "1/4 in"',
  support: 'un point d’appui',
  'thread condition': '"dry", "oiled", "sealant", "anti-seize", "threadlocker" ou "as supplied"',
  tightening:
    '"22 N·m with" et l’id d’une clé, "1.5 turns", "by the manual", "by hand", "without a wrench", "not checked" ou "not known"',
  title: 'le titre d’un manuel',
  turns: 'des tours tels que "1 to 1.5 turns"',
  'type of wrench': '"click", "dial", "beam" ou "electronic"',
  use: '"fill", "drain" ou "level"',
  vessel: 'le repère le plus haut et le pas, par exemple "700 mL by 10"',
  'wheel mark': '"mark down", "mark level" ou "mark up"',
  wheels: 'un nombre tel que "2 wheels"',
}

/** The message for a text that does not fit the notation. */
export function describeNotation({ found, expected, reason }: SpecCodes['spec/bad-notation']): string {
  const parts = expected.map((part) => PART_TEXTS[part] ?? quote(part))
  const foundText = found === '' ? 'il n’y a rien' : `trouvé ${quote(found)}`
  const reasonText = reason === undefined ? '' : (REASON_TEXTS[reason] ?? '')
  return parts.length === 0
    ? `Texte inattendu : ${found === '' ? 'rien' : quote(found)}.${reasonText}`
    : `Attendu : ${join(parts, 'ou')} ; ${foundText}.${reasonText}`
}

const REASON_TEXTS: Readonly<Record<string, string>> = {
  'quantity/unit-is-ambiguous': ' L’unité peut avoir deux sens : écrire l’unité voulue.',
  'quantity/ratio-of-units':
    ' Cette unité est un rapport ; un couple est une force multipliée par une longueur.',
  'quantity/unit-in-wrong-case': ' Majuscules et minuscules changent le sens de cette unité.',
  'quantity/mass-unit-for-force': ' C’est une unité de masse, pas de force.',
  'quantity/unit-of-other-measure': ' Cette unité est pour une autre sorte de grandeur.',
  'quantity/unit-is-missing': ' L’unité manque.',
  'quantity/unit-is-unknown': ' L’unité est inconnue.',
  'quantity/decimal-mark-is-unclear':
    ' La virgule peut marquer les décimales ou les milliers : écrire un point décimal, sans séparateur de milliers.',
}
