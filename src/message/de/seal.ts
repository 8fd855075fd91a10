import type { SealCodes } from '../../seal/index.js'
import type { Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'
import { cardWords } from './card.js'

const OPENING_REASONS: Readonly<Record<string, string>> = {
  'cracked loose': 'Eine gelöste Schraube gilt als geöffnet.',
  'level check': 'Die Schraube wird zum Prüfen des Ölstands geöffnet.',
}

/** After `in`. */
const MEDIA: Readonly<Record<'mineral gear oil' | 'hypoid EP oil', string>> = {
  'mineral gear oil': 'mineralischem Getriebeöl',
  'hypoid EP oil': 'Hypoidöl mit EP-Zusätzen',
}

const writeSeal = (kind: string): string => nameOf(cardWords.seals, kind)
const writeMaterial = (material: string): string => nameOf(cardWords.sealMaterials, material)
const writeMedium = (medium: string): string => nameOf(MEDIA, medium)

export const sealTexts: Texts<SealCodes> = {
  'seal/crush-washer-every-opening': ({ how }) =>
    `${OPENING_REASONS[how] ?? 'Die Schraube kommt heraus.'} Neuen Dichtring einsetzen.`,
  'seal/reuse-stated': () =>
    'Die Anleitung erlaubt, diesen Dichtring wiederzuverwenden, wenn er noch gut ist. Im Zweifel einen neuen einsetzen.',
  'seal/replace-not-stated': ({ kind }) =>
    `${writeSeal(kind)}: Die Anleitung gibt nicht an, wann zu ersetzen ist. Neu einsetzen.`,
  'seal/sheet-says-every-opening': ({ kind }) =>
    `${writeSeal(kind)}: laut Anleitung bei jedem Öffnen zu ersetzen.`,
  'seal/sheet-says-on-condition': ({ kind }) =>
    `${writeSeal(kind)}: Die Anleitung erlaubt die Wiederverwendung bei gutem Zustand. Prüfen.`,
  'seal/apply-new-sealant': ({ product }) => `Altes Dichtmittel entfernen und neu auftragen: ${product}.`,
  'seal/apply-new-liquid-gasket': ({ product }) =>
    `Alte Dichtung entfernen und eine neue Raupe auftragen: ${product}.`,
  'seal/not-stated': () =>
    'Das Datenblatt gibt keine Dichtung an. Siehe Anleitung; eine Dichtung bereithalten.',
  'seal/look-for-cuts': () => 'Keine Schnitte, Kerben oder Risse.',
  'seal/look-for-flattening': () => 'Nicht plattgedrückt.',
  'seal/look-for-hardness': () => 'Nicht hart, keine Risse beim Biegen.',
  'seal/look-for-swelling': () => 'Nicht gequollen oder weich.',
  'seal/look-at-faces': () => 'Kein Kratzer quer über die Fläche.',
  'seal/look-at-bonded-lip': () => 'Die Gummilippe ist unbeschädigt und sitzt fest im Ring.',
  'seal/thread-unreadable': ({ thread }) => `Unbekanntes Gewinde „${thread}“.`,
  'seal/size-not-stated': () => 'Die Größe des Dichtrings ist nicht angegeben.',
  'seal/taper-thread-takes-no-washer': ({ thread }) =>
    `${thread} ist ein kegeliges Gewinde: Es dichtet im Gewinde. Keinen Dichtring einsetzen.`,
  'seal/pipe-size-not-known': ({ thread }) => `Der Durchmesser von ${thread} ist nicht bekannt.`,
  'seal/ring-held-on-plug': ({ thread }) =>
    `Der Ring ist an der Schraube gehalten, hinter ihrem Gewinde ${thread}; den Hersteller der Schraube nach der Größe fragen.`,
  'seal/washer-in-table': ({ thread, washer }) => `${washer} ist eine Größe nach DIN 7603 für ${thread}.`,
  'seal/washer-plausible': ({ thread, washer }) =>
    `${washer} passt über ${thread}; es ist keine der Größen nach DIN 7603 in der Tabelle.`,
  'seal/washer-bore-too-small': ({ thread, inside, major }, say) =>
    `Der Innendurchmesser des Dichtrings, ${say.quantity(inside)}, passt nicht über ${thread}, Durchmesser ${say.quantity(major)}.`,
  'seal/washer-bore-too-large': ({ thread, inside, largest }, say) =>
    `Der Innendurchmesser des Dichtrings, ${say.quantity(inside)}, ist zu groß für ${thread}; über ${say.quantity(largest)} bleibt er nicht mittig.`,
  'seal/washer-rim-too-narrow': ({ inside, outside, smallest }, say) =>
    `Ein Dichtring mit ${say.quantity(inside)} innen und ${say.quantity(outside)} außen ist zu schmal zum Dichten. Der Außendurchmesser muss mindestens ${say.quantity(smallest)} betragen.`,
  'seal/washer-thickness-doubtful': ({ thickness, min, max }, say) =>
    `Eine Dicke von ${say.quantity(thickness)} ist ungewöhnlich; üblich sind ${say.quantity(min)} bis ${say.quantity(max)}.`,
  'seal/o-ring-agrees': ({ designation, inside, section }, say) =>
    `${designation}: Innendurchmesser ${say.quantity(inside)}, Schnurstärke ${say.quantity(section)}.`,
  'seal/o-ring-differs': ({ designation, inside, section }, say) =>
    `Die Größe entspricht nicht ${designation}: Innendurchmesser ${say.quantity(inside)}, Schnurstärke ${say.quantity(section)}.`,
  'seal/o-ring-found': ({ designation }) => `Das ist die Größe von ${designation}.`,
  'seal/o-ring-not-in-table': ({ designation }) =>
    `${designation} ist keine der Größen nach AS568 und JIS B 2401 in der Tabelle. In der Norm nachsehen.`,
  'seal/o-ring-size-not-in-table': () =>
    'Die Größe ist keine der Größen nach AS568 und JIS B 2401 in der Tabelle.',
  'seal/o-ring-not-described': () => 'Weder die Größe noch die Strichnummer des O-Rings ist angegeben.',
  'seal/material-not-stated': () => 'Der Werkstoff der Dichtung ist nicht angegeben.',
  'seal/material-unsuitable': ({ material, medium }) =>
    `${writeMaterial(material)} quillt in ${writeMedium(medium)}. Nie einsetzen.`,
  'seal/material-poor': ({ material, medium }) =>
    `${writeMaterial(material)} ist in ${writeMedium(medium)} wenig beständig. Den Dichtungshersteller fragen.`,
  'seal/material-suitable': ({ material, medium, min, max }, say) =>
    `${writeMaterial(material)} ist in ${writeMedium(medium)} von ${say.quantity(min)} bis ${say.quantity(max)} beständig.`,
  'seal/above-continuous-limit': ({ material, medium, temperature, max }, say) =>
    `In ${writeMedium(medium)} hält ${writeMaterial(material)} im Dauerbetrieb bis ${say.quantity(max)}; die Betriebstemperatur, ${say.quantity(temperature)}, ist höher. Den Dichtungshersteller fragen.`,
  'seal/material-limits-not-known': ({ material }) =>
    `Die Temperaturgrenzen von ${writeMaterial(material)} sind nicht bekannt. Den Dichtungshersteller fragen.`,
  'seal/temperature-needs-special-compound': ({ material, temperature, min, max }, say) =>
    `Bei ${say.quantity(temperature)} halten nur Sondermischungen von ${writeMaterial(material)}; üblich sind ${say.quantity(min)} bis ${say.quantity(max)}. Den Dichtungshersteller fragen.`,
  'seal/temperature-outside-material': ({ material, temperature, min, max }, say) =>
    `${say.quantity(temperature)} liegt außerhalb des Bereichs von ${writeMaterial(material)}, ${say.quantity(min)} bis ${say.quantity(max)}.`,
  'seal/in-stock': ({ name, count }, say) => `${say.number(count)} × ${name} aus dem Bestand nehmen.`,
  'seal/buy': ({ count }, say) => `${say.number(count)} kaufen.`,
  'seal/keep-spare': ({ count }, say) =>
    `${say.count(count, 'Ersatzdichtung', 'Ersatzdichtungen')} bereithalten, falls die alte die Prüfung nicht besteht.`,
  'seal/stock-may-match': ({ name }) => `Im Bestand, vielleicht gleich: ${name}. Prüfen.`,
}
