import type { OilCodes } from '../../oil/index.js'
import type { LimitedSlip } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'

type Limits = OilCodes['oil/ambient-in-range'] | OilCodes['oil/ambient-not-given']

/** A band in words: `von −10 °C bis 30 °C`, `ab −10 °C`, `bis 30 °C`. */
function writeRange({ min, max }: Limits, say: Say): string {
  if (min === undefined) return max === undefined ? 'jede Temperatur' : `bis ${say.quantity(max)}`
  return max === undefined ? `ab ${say.quantity(min)}` : `von ${say.quantity(min)} bis ${say.quantity(max)}`
}

const LIMITED_SLIP_RULES: Readonly<Record<LimitedSlip, string>> = {
  required: 'vorgeschrieben',
  'not permitted': 'nicht zulässig',
  either: 'mit oder ohne',
  'not stated': 'nicht angegeben',
}

export const oilTexts: Texts<OilCodes> = {
  'oil/grade-not-known': ({ grade, system, known }, say) =>
    `${system} hat keine Klasse „${grade}“. Bekannte Klassen: ${say.list(known)}.`,
  'oil/grade-not-in-edition': ({ grade, system, edition }) =>
    `${grade} steht nicht in der Ausgabe ${edition} von ${system}.`,
  'oil/grade-impossible': ({ grade, system }) =>
    `Kein Öl kann ${grade} sein: Die beiden Teile widersprechen sich in ${system}.`,
  'oil/edition-not-known': ({ edition, system, known }, say) =>
    `Unbekannte Ausgabe „${edition}“ von ${system}. Bekannte Ausgaben: ${say.list(known.map((name) => `„${name}“`))}; alle wurden berücksichtigt.`,
  'oil/grade-same': ({ grade }) => `Auf dem Etikett steht ${grade}, wie die Anleitung verlangt.`,
  'oil/multigrade-covers': ({ permitted, offered }) =>
    `${offered} erfüllt alle Grenzen von ${permitted} und auch die einer weiteren Klasse.`,
  'oil/grade-differs': ({ permitted, offered }) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${offered}.`,
  'oil/hot-grade-thicker': ({ permitted, offered }) =>
    `Die Anleitung verlangt ${permitted}, ohne Klasse für heißes Öl; auf dem Etikett steht ${offered}, heiß viel dickflüssiger. Den Maschinenhersteller fragen.`,
  'oil/grade-renamed': ({ permitted, offered, system }) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${offered}. Ausgaben von ${system} teilen diese Klassen verschieden ein: klären, welche Ausgabe die Anleitung meint.`,
  'oil/winter-grade-missing': ({ permitted, offered }) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${offered}, ohne Winterklasse.`,
  'oil/winter-grade-colder': ({ permitted, offered }) =>
    `${offered} ist in der Kälte dünnflüssiger als ${permitted} laut Anleitung. Fragen, ob es zulässig ist.`,
  'oil/winter-grade-warmer': ({ permitted, offered }) =>
    `${offered} ist in der Kälte zu dickflüssig: Die Anleitung verlangt ${permitted}.`,
  'oil/grade-not-on-label': ({ permitted }) =>
    `Das Etikett nennt keine Viskositätsklasse; die Anleitung verlangt ${permitted}. Produktdatenblatt prüfen.`,
  'oil/systems-differ': ({ permitted, offered }) =>
    `${permitted} und ${offered} sind Klassen verschiedener Systeme; keine ersetzt die andere.`,
  'oil/viscosity-inside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} bei ${say.quantity(at)} liegt in den Grenzen von ${grade}. Die Viskosität allein macht das Öl nicht zu dieser Klasse: den Ölhersteller fragen.`,
  'oil/viscosity-outside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} bei ${say.quantity(at)} liegt außerhalb der Grenzen von ${grade}.`,
  'oil/label-contradicts-viscosity': ({ grade, viscosity, at }, say) =>
    `Auf dem Etikett steht ${grade}, aber ${say.quantity(viscosity)} bei ${say.quantity(at)} liegt außerhalb dieser Klasse. Eine der Angaben ist falsch.`,
  'oil/maker-fluid-named': ({ name }) => `Das Etikett nennt ${name}.`,
  'oil/maker-fluid-not-named': ({ name, offered }) =>
    `Die Anleitung lässt nur ${name} zu; das Etikett nennt es nicht (${offered}). Gleiche Viskosität genügt nicht.`,
  'oil/category-not-stated': () => 'Die Anleitung gibt keine Leistungsklasse an.',
  'oil/category-on-label': ({ category }) => `Auf dem Etikett steht ${category}, wie die Anleitung verlangt.`,
  'oil/category-not-on-label': ({ category }) =>
    `Das Etikett nennt keine Leistungsklasse; die Anleitung verlangt ${category}. Produktdatenblatt prüfen.`,
  'oil/category-differs': ({ permitted, offered }, say) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${say.list(offered)}.`,
  'oil/category-doubtful': ({ permitted, offered }, say) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${say.list(offered)}. Ob die eine Klasse die andere einschließt, ist nicht bekannt: den Ölhersteller fragen.`,
  'oil/category-harms-yellow-metal': ({ permitted, offered }, say) =>
    `In diesem Öl laufen Teile aus Bronze oder Messing. Die Anleitung verlangt ${permitted}; die Zusätze von ${say.list(offered)} können sie angreifen. Öl nach ${permitted} verwenden.`,
  'oil/category-yellow-metal-unknown': ({ permitted, offered }, say) =>
    `Die Anleitung verlangt ${permitted}; auf dem Etikett steht ${say.list(offered)}. Das Datenblatt gibt nicht an, ob in diesem Öl Teile aus Bronze oder Messing laufen. Den Maschinenhersteller fragen.`,
  'oil/category-higher-no-yellow-metal': ({ permitted, offered }, say) =>
    `${say.list(offered)} ist für höhere Belastung als ${permitted}, und in diesem Öl laufen keine Teile aus Bronze oder Messing.`,
  'oil/category-dual-rated': ({ permitted, offered }, say) =>
    `Auf dem Etikett steht ${say.list(offered)} zusammen. Den Ölhersteller fragen, ob es verwendet werden darf, wo die Anleitung ${permitted} verlangt.`,
  'oil/limited-slip-not-stated': () => 'Die Anleitung erwähnt keinen Zusatz für Sperrdifferenziale.',
  'oil/limited-slip-fits': ({ limitedSlip }) =>
    limitedSlip === 'either'
      ? 'Das Öl darf einen Zusatz für Sperrdifferenziale enthalten, muss aber nicht.'
      : limitedSlip === 'required'
        ? 'Das Öl enthält den Zusatz für Sperrdifferenziale, den die Anleitung verlangt.'
        : 'Das Öl ist ohne Zusatz für Sperrdifferenziale, wie die Anleitung verlangt.',
  'oil/limited-slip-additive-missing': () =>
    'Die Anleitung verlangt einen Zusatz für Sperrdifferenziale, dieses Öl hat keinen.',
  'oil/limited-slip-additive-separate': ({ name }) =>
    `Das Öl hat keinen Zusatz für Sperrdifferenziale; er wird nach Anleitung getrennt zugegeben: ${name}.`,
  'oil/limited-slip-additive-twice': ({ name }) =>
    `Das Öl enthält bereits einen Zusatz für Sperrdifferenziale, und die Anleitung gibt einen zu: ${name}. Vor der Verwendung beider den Maschinenhersteller fragen.`,
  'oil/limited-slip-not-permitted': () =>
    'Das Öl enthält einen Zusatz für Sperrdifferenziale; die Anleitung lässt keinen zu.',
  'oil/limited-slip-not-mentioned': () =>
    'Das Öl enthält einen Zusatz für Sperrdifferenziale; die Anleitung erwähnt keinen. Den Maschinenhersteller fragen.',
  'oil/limited-slip-not-on-label': ({ limitedSlip }) =>
    `Das Etikett sagt nicht, ob das Öl einen Zusatz für Sperrdifferenziale enthält; laut Anleitung: ${nameOf(LIMITED_SLIP_RULES, limitedSlip)}. Produktdatenblatt prüfen.`,
  'oil/ambient-in-range': (params, say) =>
    `${say.quantity(params.ambient)} liegt im Bereich der Anleitung für dieses Öl: ${writeRange(params, say)}.`,
  'oil/ambient-out-of-range': (params, say) =>
    `${say.quantity(params.ambient)} liegt außerhalb des Bereichs der Anleitung für dieses Öl: ${writeRange(params, say)}.`,
  'oil/ambient-not-given': (params, say) =>
    `Bereich der Anleitung für dieses Öl: ${writeRange(params, say)}. Umgebungstemperatur angeben.`,
  'oil/ambient-not-a-range': ({ printed }, say) =>
    `Das Datenblatt gibt für dieses Öl ${say.quantity(printed)} an, keinen Bereich. Anleitung prüfen.`,
  'oil/ambient-not-limited': () => 'Die Anleitung gibt für dieses Öl keinen Temperaturbereich an.',
  'oil/oils-not-stated': () => 'Das Datenblatt gibt kein Öl an. Siehe Anleitung.',
  'oil/no-oil-for-ambient': ({ ambient }, say) =>
    `Die Anleitung lässt bei ${say.quantity(ambient)} keines ihrer Öle zu.`,
  'oil/viscosities-missing': ({ missing }, say) => {
    const names = missing.map((name) => (name === 'kv40' ? '40 °C' : '100 °C'))
    return `Die Viskosität bei ${say.list(names)} ist nicht bekannt. Siehe Produktdatenblatt.`
  },
  'oil/viscosities-reversed': ({ kv40, kv100 }, say) =>
    `${say.quantity(kv40)} bei 40 °C und ${say.quantity(kv100)} bei 100 °C können nicht dasselbe Öl sein: Öl wird beim Erwärmen dünner.`,
  'oil/below-pour-point': ({ temperature, pourPoint }, say) =>
    `Bei ${say.quantity(temperature)} liegt das Öl unter seinem Pourpoint von ${say.quantity(pourPoint)}. Zuerst erwärmen.`,
  'oil/pour-point-not-stated': () => 'Der Pourpoint ist nicht bekannt und wurde daher nicht geprüft.',
  'oil/temperature-outside-range': ({ temperature, min, max }, say) =>
    `${say.quantity(temperature)} liegt außerhalb des Bereichs der Formel, ${say.quantity(min)} bis ${say.quantity(max)}.`,
  'oil/viscosity-outside-range': ({ viscosity, temperature, min, max }, say) =>
    viscosity === undefined
      ? `Bei ${say.quantity(temperature)} liegt die Viskosität außerhalb des Bereichs der Formel, ${say.quantity(min)} bis ${say.quantity(max)}.`
      : `${say.quantity(viscosity)} liegt außerhalb des Bereichs der Formel, ${say.quantity(min)} bis ${say.quantity(max)}.`,
  'oil/viscosity-by-d341': ({ kv40, kv100, temperature }, say) =>
    `Viskosität bei ${say.quantity(temperature)} nach ASTM D341 aus ${say.quantity(kv40)} bei 40 °C und ${say.quantity(kv100)} bei 100 °C.`,
  'oil/viscosity-index-undefined': ({ kv100, min }, say) =>
    `Unter ${say.quantity(min)} bei 100 °C gibt es keinen Viskositätsindex; dieses Öl hat ${say.quantity(kv100)}.`,
  'oil/viscosity-index-by-d2270': ({ procedure, kv40, kv100 }, say) =>
    `Viskositätsindex nach ASTM D2270, Verfahren ${procedure}, aus ${say.quantity(kv40)} bei 40 °C und ${say.quantity(kv100)} bei 100 °C.`,
  'oil/density-missing': () => 'Die Dichte bei 15 °C ist nicht bekannt. Siehe Produktdatenblatt.',
  'oil/density-outside-range': ({ density, min, max }, say) =>
    `${say.quantity(density)} ist keine Dichte eines Schmieröls; die Tabelle reicht von ${say.quantity(min)} bis ${say.quantity(max)}.`,
  'oil/density-by-d1250': ({ density15, temperature }, say) =>
    `Dichte bei ${say.quantity(temperature)} nach ASTM D1250, Schmieröle, aus ${say.quantity(density15)} bei 15 °C.`,
}
