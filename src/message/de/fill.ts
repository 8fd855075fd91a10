import type { Param } from '../../base/index.js'
import type { FillCodes } from '../../fill/index.js'
import type { FillMethod } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'

function writeLimits({ min, max }: { min?: Param; max?: Param }, say: Say): string {
  if (min === undefined) return `höchstens ${say.quantity(max)}`
  return max === undefined
    ? `mindestens ${say.quantity(min)}`
    : `${say.quantity(min)} bis ${say.quantity(max)}`
}

/** `0,09 L weniger als` or `0,09 L mehr als`: a minus sign in a sentence is easily missed. */
function writeDifference(
  { value, unit }: FillCodes['fill/refill-level-decides']['difference'],
  say: Say,
): string {
  const size = { value: Math.abs(Number(value)), unit }
  return `${say.quantity(size)} ${Number(value) < 0 ? 'weniger' : 'mehr'} als`
}

/** What decides, with its article. */
const METHOD_NAMES: Readonly<Record<Exclude<FillMethod['kind'], 'by quantity' | 'not stated'>, string>> = {
  'to level hole': 'Die Kontrollbohrung',
  dipstick: 'Der Peilstab',
  'sight glass': 'Das Schauglas',
}

export const fillTexts: Texts<FillCodes> = {
  'fill/hose-not-below-funnel': () =>
    'Das Schlauchende liegt nicht unter dem Trichter, der Schlauch läuft nie leer. Trichter höher halten.',
  'fill/drop-longer-than-hose': ({ drop, length }, say) =>
    `Der Schlauch ist ${say.quantity(length)} lang, kürzer als sein Höhenunterschied von ${say.quantity(drop)}. Werkzeugkasten berichtigen.`,
  'fill/bore-wider-than-funnel': ({ bore, diameter }, say) =>
    `Der Innendurchmesser des Schlauchs, ${say.quantity(bore)}, ist nicht kleiner als der Durchmesser des Trichters, ${say.quantity(diameter)}. Werkzeugkasten berichtigen.`,
  'fill/measure-outside-range': ({ name, given, min, max }, say) =>
    `„${name}“ beträgt ${say.quantity(given)}; die Eingießzeit lässt sich nur von ${say.quantity(min)} bis ${say.quantity(max)} berechnen.`,
  'fill/flow-not-laminar': ({ reynolds, limit }, say) =>
    `Die Strömung ist möglicherweise nicht laminar (Reynolds-Zahl ${say.number(reynolds, 0)}, Grenze ${say.number(limit)}), daher wird keine Eingießzeit berechnet.`,
  'fill/entrance-longer-than-hose': ({ entrance, length }, say) =>
    `Die Strömung wird erst nach ${say.quantity(entrance)} gleichmäßig, der Schlauch ist aber ${say.quantity(length)} lang, daher wird keine Eingießzeit berechnet.`,
  'fill/funnel-too-small': ({ fillings, limit }, say) =>
    `Der Trichter muss ${say.number(fillings)}-mal gefüllt werden (Grenze ${say.number(limit)}), daher wird keine Eingießzeit berechnet. Größeren Trichter verwenden.`,
  'fill/flow-laminar': ({ reynolds, limit }, say) =>
    `Die Strömung ist laminar: Reynolds-Zahl ${say.number(reynolds, 1)}, Grenze ${say.number(limit)}.`,
  'fill/kinetic-correction': ({ seconds }, say) =>
    `Beschleunigung und Schlaucheinlauf verlängern um ${say.number(seconds, 1)} s.`,
  'fill/several-fillings': ({ fillings, funnel }, say) =>
    `Der Trichter fasst ${say.quantity(funnel)} und wird ${say.number(fillings)}-mal gefüllt, jeweils nachdem er leer gelaufen ist. Ständiges Nachfüllen geht schneller.`,
  'fill/hose-never-full': ({ hose }, say) =>
    `Der Schlauch fasst ${say.quantity(hose)}, mehr als die Eingießmenge, und füllt sich daher nie.`,
  'fill/wall-film-not-counted': () =>
    'Der Ölfilm in Trichter und Schlauch ist nicht eingerechnet. Abtropfen lassen.',
  'fill/fill-opening-closed': () =>
    'Die Einfüllschraube ist noch eingedreht, es kann keine Luft eintreten: keine Ablasszeit berechnet. Einfüllschraube herausdrehen.',
  'fill/drain-is-the-only-opening': () =>
    'Luft kann nur durch die Ablassöffnung eintreten: keine Ablasszeit berechnet.',
  'fill/breather-blocked': () => 'Der Entlüfter ist verstopft. Zuerst frei machen.',
  'fill/breather-not-checked': () => 'Der Entlüfter wurde nicht geprüft. Sicherstellen, dass er frei ist.',
  'fill/drain-time-is-a-minimum': () =>
    'Die Ablasszeit ist ein Mindestwert: Kein Getriebe läuft schneller leer.',
  'fill/wait-for-single-drips': () => 'Ablaufen lassen, bis es nur noch tropft.',
  'fill/no-containers': ({ short }, say) => `Kein geeignetes Öl im Bestand. ${say.quantity(short)} besorgen.`,
  'fill/opened-first': ({ container, taken }, say) =>
    `Zuerst ${say.quantity(taken)} aus dem geöffneten Gebinde verwenden: ${container}.`,
  'fill/containers-left-over': ({ oil, left }, say) =>
    `${oil}: ${say.quantity(left)} bleiben im letzten Gebinde.`,
  'fill/containers-exact': ({ oil }) => `${oil}: Es bleibt nichts übrig.`,
  'fill/containers-short': ({ oil, short }, say) =>
    `${oil}: nicht genug im Bestand, es fehlen ${say.quantity(short)}. Kaufen.`,
  'fill/containers-not-searched-fully': ({ tried }, say) =>
    `Zu viele Kombinationen der Gebinde: Verwendet wird die beste der ersten ${say.number(tried)}.`,
  'fill/other-oil-not-mixed': ({ oil, other }) =>
    `${other} bleibt im Bestand: wird nicht mit ${oil} gemischt.`,
  'fill/no-vessel': () => 'Kein Messbecher vorhanden. Einen besorgen.',
  'fill/vessel-too-coarse': ({ vessel, error, tolerance }, say) =>
    `„${vessel}“ ist nicht genau genug: Der Fehler kann ${say.quantity(error)} betragen; zulässig sind ${say.quantity(tolerance)}.`,
  'fill/vessel-without-marks': ({ vessel }) =>
    `„${vessel}“ hat keine Teilstriche. Werkzeugkasten berichtigen.`,
  'fill/vessel-too-large': ({ vessel, lowestMark }, say) =>
    `Die Menge liegt unter dem untersten Teilstrich von „${vessel}“, ${say.quantity(lowestMark)}.`,
  'fill/vessel-too-many-pours': ({ vessel, limit }, say) =>
    `„${vessel}“ muss mehr als ${say.number(limit)}-mal gefüllt werden.`,
  'fill/vessel-accurate-enough': ({ vessel, error, tolerance }, say) =>
    `„${vessel}“ misst auf ${say.quantity(error)} genau; zulässig sind ${say.quantity(tolerance)}.`,
  'fill/vessel-in-several-pours': ({ vessel, pours }, say) =>
    `Mit „${vessel}“ in ${say.count(pours, 'Füllung', 'Füllungen')} abmessen.`,
  'fill/tolerance-not-stated': ({ error }, say) =>
    `Die Anleitung gibt keine Toleranz der Füllmenge an. Das beste Gefäß misst auf ${say.quantity(error)} genau.`,
  'fill/no-pan': () => 'Keine Auffangwanne vorhanden. Eine besorgen.',
  'fill/pan-large-enough': ({ pan, total, size }, say) =>
    `„${pan}“ fasst ${say.quantity(size)}; bei diesem Einsatz werden ${say.quantity(total)} abgelassen.`,
  'fill/pan-nearly-full': ({ pan, percent }, say) =>
    `„${pan}“ wird zu ${say.number(percent)} % voll. Vorsichtig tragen oder zwischendurch leeren.`,
  'fill/empty-pan-between-drains': ({ pan, total, size }, say) =>
    `Bei diesem Einsatz werden ${say.quantity(total)} abgelassen; „${pan}“ fasst ${say.quantity(size)}. Zwischendurch leeren.`,
  'fill/pan-too-small': ({ largest, size }, say) =>
    `${say.quantity(largest)} laufen auf einmal ab; die größte Wanne fasst ${say.quantity(size)}. Größere Wanne besorgen.`,
  'fill/refill-not-stated': () => 'Das Datenblatt gibt keine Füllmenge an. Siehe Anleitung.',
  'fill/refill-as-printed': ({ refilled, printed }, say) =>
    `Eingefüllt: ${say.quantity(refilled)}; Angabe der Anleitung: ${say.quantity(printed)}.`,
  'fill/refill-inside-band': ({ refilled, ...band }, say) =>
    `Eingefüllt: ${say.quantity(refilled)}; laut Anleitung zulässig: ${writeLimits(band, say)}.`,
  'fill/refill-outside-band': ({ refilled, min, max }, say) =>
    `Eingefüllt: ${say.quantity(refilled)}; laut Anleitung zulässig: ${writeLimits({ ...(min && { min }), ...(max && { max }) }, say)}. Menge berichtigen.`,
  'fill/refill-band-not-stated': ({ refilled, printed, difference }, say) =>
    `Eingefüllt: ${say.quantity(refilled)}, ${writeDifference(difference, say)} die ${say.quantity(printed)}, die die Anleitung ohne Toleranz angibt.`,
  'fill/refill-level-decides': ({ difference, method }, say) =>
    Number(difference.value) === 0
      ? `${nameOf(METHOD_NAMES, method)} entscheidet; eingefüllt wurde genau die angegebene Menge.`
      : `${nameOf(METHOD_NAMES, method)} entscheidet; eingefüllt wurden ${writeDifference(difference, say)} angegeben.`,
  'fill/refill-far-off': ({ difference, percent, limit }, say) =>
    `Halt: Eingefüllt wurden ${writeDifference(difference, say)} angegeben (${say.number(percent, 0)} %; Grenze ${say.number(limit)} %). Prüfen, ob die Maschine waagerecht steht und kein altes Öl im Gehäuse blieb.`,
}
