import { type QuantityCodes, unitSymbol } from '../../quantity/index.js'
import type { Texts } from '../catalogue.js'
import { writeFigure } from '../phrases.js'

const listSymbols = (candidates: readonly Parameters<typeof unitSymbol>[0][]): string[] =>
  candidates.map(unitSymbol)

export const quantityTexts: Texts<QuantityCodes> = {
  'quantity/text-is-empty': () => 'Erwartet: ein Wert mit Einheit; gefunden: nichts.',
  'quantity/text-is-too-long': ({ length, longest }, say) =>
    `Der Text hat ${say.number(length)} Zeichen; zulässig sind ${say.number(longest)}.`,
  'quantity/number-is-missing': ({ text }) => `Erwartet: zuerst eine Zahl; gefunden: „${text}“.`,
  'quantity/superscript-digit': ({ text, without }) =>
    `„${text}“ hat eine hochgestellte Ziffer, die nicht zur Zahl gehört. „${without}“ schreiben, die Fußnote getrennt.`,
  'quantity/number-is-unreadable': ({ text }) =>
    `Unlesbare Zahl in „${text}“. Bis zu neun Ziffern, ein Dezimalzeichen, bis zu sechs Dezimalstellen und keine führende Null schreiben.`,
  'quantity/decimal-mark-is-unclear': ({ text, withPoint, withComma }) =>
    `„${text}“ kann ${withPoint} oder ${withComma} bedeuten. Angeben, ob Komma oder Punkt das Dezimalzeichen ist.`,
  'quantity/fraction-is-rounded': ({ text, value }) =>
    `Der Bruch in „${text}“ hat keine genaue Dezimalzahl; verwendet wird ${value}.`,
  'quantity/value-is-negative': ({ quantity }, say) =>
    `${say.quantity(quantity)} ist negativ; das darf nur eine Temperatur sein.`,
  'quantity/limits-reversed': ({ min, max }) =>
    `Mindestwert ${min} liegt über Höchstwert ${max}. Den kleineren zuerst schreiben.`,
  'quantity/unit-is-missing': ({ text }) => `Keine Einheit in „${text}“. Eine schreiben, wie in 20 N·m.`,
  'quantity/unit-is-unknown': ({ text }) => `Unbekannte Einheit „${text}“.`,
  'quantity/unit-is-ambiguous': ({ text, candidates }, say) =>
    candidates.length === 1
      ? `„${text}“ allein ist keine Einheit. Gemeint: ${say.list(listSymbols(candidates))}?`
      : `„${text}“ ist mehrdeutig: ${say.list(listSymbols(candidates))}. Die gemeinte schreiben.`,
  'quantity/ratio-of-units': ({ text, candidates }, say) =>
    `„${text}“ ist eine Einheit geteilt durch eine andere; Drehmoment ist Kraft mal Länge. Gemeint: ${say.list(listSymbols(candidates))}?`,
  'quantity/unit-in-wrong-case': ({ text, candidates }, say) =>
    `Groß- und Kleinschreibung ändert die Bedeutung von „${text}“. Gemeint: ${say.list(listSymbols(candidates))}?`,
  'quantity/mass-unit-for-force': ({ text, unit }) =>
    `„${text}“ hat eine Einheit der Masse statt der Kraft; gelesen als ${unitSymbol(unit)}.`,
  'quantity/unit-of-other-measure': ({ unit, measure }) =>
    `${unitSymbol(unit)} ist keine Einheit für: ${MEASURE_NAMES[measure]}.`,
  'quantity/text-after-quantity': ({ text }) =>
    `Unerwarteter Text nach dem Wert: „${text}“. Nur einen Wert schreiben.`,
  'quantity/printed-figures-differ-slightly': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)} unterscheiden sich um ${say.number(missPercent, 2)} %. Anleitung prüfen; einer der Werte kann ein Druckfehler sein.`,
  'quantity/printed-figures-slip': ({ first, second, slip, ratio }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)} unterscheiden sich um den Faktor ${writeFigure(ratio, say)}: ${SLIP_NAMES[slip]}. Vor Gebrauch klären, welcher stimmt.`,
  'quantity/printed-figures-differ': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)} können nicht derselbe Wert sein; sie unterscheiden sich um ${say.number(missPercent, 2)} %. Anleitung prüfen.`,
  'quantity/printed-figures-not-comparable': ({ first, second }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)} sind keine Grenzen derselben Art und daher nicht vergleichbar.`,
}

const SLIP_NAMES: { readonly [Slip in QuantityCodes['quantity/printed-figures-slip']['slip']]: string } = {
  'foot for inch': 'vielleicht wurden Pound-inch und Pound-foot verwechselt',
  'kilogram-force for newton': 'vielleicht wurden Kilopond und Newton verwechselt',
  'number copied between pound-foot and newton metre':
    'vielleicht wurde eine Zahl in lbf·ft oder N·m ohne Umrechnung übernommen oder doppelt umgerechnet',
  'US for imperial measure': 'vielleicht wurden US- und britische Maße verwechselt',
  'US for imperial fluid ounce': 'vielleicht wurden US- und britische Flüssigunzen verwechselt',
}

export const MEASURE_NAMES: {
  readonly [M in QuantityCodes['quantity/unit-of-other-measure']['measure']]: string
} = {
  torque: 'Drehmoment',
  volume: 'Volumen',
  length: 'Länge',
  distance: 'Strecke',
  force: 'Kraft',
  pressure: 'Druck',
  temperature: 'Temperatur',
  temperatureDifference: 'Temperaturdifferenz',
  mass: 'Masse',
  duration: 'Zeit',
  angle: 'Winkel',
  speed: 'Geschwindigkeit',
  kinematicViscosity: 'kinematische Viskosität',
  dynamicViscosity: 'dynamische Viskosität',
  density: 'Dichte',
}
