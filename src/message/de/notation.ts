import type { NotationPart, SpecCodes } from '../../spec/index.js'
import { join } from '../phrases.js'

/**
 * The parts of short notation, each with an example to copy (without no-break spaces). The examples are typed as they
 * are, since documents have English words.
 */
const PART_TEXTS: Readonly<Partial<Record<NotationPart, string>>> = {
  torque: 'ein Drehmoment wie "30 N·m"',
  volume: 'ein Volumen wie "450 mL"',
  length: 'eine Länge wie "3 mm"',
  distance: 'eine Strecke wie "2000 km"',
  mass: 'eine Masse wie "640 kg"',
  duration: 'eine Zeit wie "30 min"',
  temperature: 'eine Temperatur wie "-10 to 45 °C"',
  angle: 'ein Winkel wie "90°"',
  access: '"from the ground" oder "raised on" mit den Kennungen von Abstützpunkten',
  accuracy: '"ISO 6789" oder Prozent wie "4 % of reading"',
  additive: '"plus 100 mL of limited-slip additive"',
  attitude: '"level on its wheels" oder "level on stands"',
  condition: 'Varianten, Modelljahre, Seriennummern oder ein Markt, wie "serial TS 00001 to 09999"',
  count: 'eine Anzahl wie "2 x"',
  date: 'ein Tag wie "2023-10-06"',
  drive: 'ein Werkzeugansatz wie "internal hex 8 mm"',
  emptying: '"drain at", "cover" oder "suction at" mit einer Kennung',
  event: 'ein Ereignis wie "submersion"',
  factor: 'ein Faktor wie "factor 0.5 when towing"',
  fasteners: 'Schrauben wie "4 x M8, external hex 13 mm"',
  filter: '"behind opening" oder "behind cover" mit einer Kennung',
  'filter done': '"new" oder "cleaned"',
  hours: 'Stunden wie "200 h"',
  id: 'eine Kennung',
  face: 'eine Seite des Getriebes wie "bottom face, left"',
  label: 'Viskositätsklasse und Leistungsklassen eines Öls wie "80W-90 GL-5"',
  'known source': 'auch die Kennung einer Quelle, da das Datenblatt mehrere hat: "[manual p. 60]"',
  'limited-slip': '"limited-slip required", "not permitted" oder "either"',
  market: 'ein Markt',
  method: '"by quantity", "to level hole", "dipstick screwed in", "dipstick resting" oder "sight glass"',
  name: 'ein Name',
  oil: 'ein Öl wie "SAE 80W-90 GL-5", "ISO VG 220" oder "maker fluid X"',
  'oil space': '"shared with" und die Kennung eines Getriebes',
  'pattern of bolts': '"crosswise", "from the middle outwards" oder "in turn"',
  period: 'ein Zeitraum wie "12 months"',
  place: 'eine Lage in Worten',
  price: 'ein Preis wie "9.50 EUR"',
  replacement: '"every opening" oder "on condition"',
  scale: 'Teilstriche und ihr Schritt wie "40–200 lbf·in by 1"',
  seal: 'eine Dichtung wie "flat copper crush washer 20 x 24 x 1.5 mm"',
  'seal done': '"new" oder "inspected and used again"',
  service: 'eine Wartung und ihr Getriebe wie "gear-oil-change of rear"',
  sheet: 'Kennung und Revision eines Datenblatts wie "ferd-2, revision 3"',
  'shorter text': 'höchstens 300 Zeichen; längere Texte ausführlich schreiben',
  size: 'eine Größe wie "20 x 24 x 1.5 mm"',
  source: 'eine Quelle wie "[p. 60]"',
  'square drive': 'ein Vierkantantrieb wie "1/4 in"',
  support: 'ein Abstützpunkt',
  'thread condition': '"dry", "oiled", "sealant", "anti-seize", "threadlocker" oder "as supplied"',
  tightening:
    '"22 N·m with" und die Kennung eines Schlüssels, "1.5 turns", "by the manual", "by hand", "without a wrench", "not checked" oder "not known"',
  title: 'der Titel einer Anleitung',
  turns: 'Umdrehungen wie "1 to 1.5 turns"',
  'type of wrench': '"click", "dial", "beam" oder "electronic"',
  use: '"fill", "drain" oder "level"',
  vessel: 'der oberste Teilstrich und der Schritt wie "700 mL by 10"',
  'wheel mark': '"mark down", "mark level" oder "mark up"',
  wheels: 'eine Anzahl wie "2 wheels"',
}

/** The message for a text that does not fit the notation. */
export function describeNotation({ found, expected, reason }: SpecCodes['spec/bad-notation']): string {
  const parts = expected.map((part) => PART_TEXTS[part] ?? part)
  const foundText = found === '' ? 'nichts' : `"${found}"`
  const reasonText = reason === undefined ? '' : (REASON_TEXTS[reason] ?? '')
  return parts.length === 0
    ? `Unerwarteter Text ${foundText}.${reasonText}`
    : `Erwartet: ${join(parts, 'oder')}; gefunden: ${foundText}.${reasonText}`
}

const REASON_TEXTS: Readonly<Record<string, string>> = {
  'quantity/unit-is-ambiguous': ' Die Einheit ist zweideutig: die gemeinte schreiben.',
  'quantity/ratio-of-units': ' Diese Einheit ist ein Quotient; Drehmoment ist Kraft mal Länge.',
  'quantity/unit-in-wrong-case': ' Groß- und Kleinschreibung ändert die Bedeutung dieser Einheit.',
  'quantity/mass-unit-for-force': ' Das ist eine Einheit der Masse, nicht der Kraft.',
  'quantity/unit-of-other-measure': ' Diese Einheit gehört zu einer anderen Größe.',
  'quantity/unit-is-missing': ' Die Einheit fehlt.',
  'quantity/unit-is-unknown': ' Die Einheit ist unbekannt.',
  'quantity/decimal-mark-is-unclear':
    ' Das Komma kann Dezimalstellen oder Tausender bedeuten: Dezimalpunkt und kein Tausenderzeichen schreiben.',
}
