import type { OilCodes } from '../../oil/index.js'
import type { LimitedSlip } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { join, nameOf } from '../phrases.js'
import { quote } from './words.js'

type Limits = OilCodes['oil/ambient-in-range'] | OilCodes['oil/ambient-not-given']

/** A band in words: `de −10 °C à 30 °C`, `à partir de −10 °C`, `jusqu’à 30 °C`. */
function writeRange({ min, max }: Limits, say: Say): string {
  if (min === undefined) return max === undefined ? 'toute température' : `jusqu’à ${say.quantity(max)}`
  return max === undefined
    ? `à partir de ${say.quantity(min)}`
    : `de ${say.quantity(min)} à ${say.quantity(max)}`
}

/** What the manual says of the additive. */
const LIMITED_SLIP: Readonly<Record<LimitedSlip, string>> = {
  required: 'exigé',
  'not permitted': 'interdit',
  either: 'avec ou sans',
  'not stated': 'non indiqué',
}

export const oilTexts: Texts<OilCodes> = {
  'oil/grade-not-known': ({ grade, system, known }, say) =>
    `${system} n’a pas de grade ${quote(grade)}. Grades connus : ${say.list(known)}.`,
  'oil/grade-not-in-edition': ({ grade, system, edition }) =>
    `${grade} n’est pas dans l’édition ${edition} de ${system}.`,
  'oil/grade-impossible': ({ grade, system }) =>
    `Aucune huile ne peut être ${grade} : les deux parties se contredisent dans ${system}.`,
  'oil/edition-not-known': ({ edition, system, known }, say) =>
    `Édition inconnue ${quote(edition)} de ${system}. Éditions connues : ${say.list(known)} ; toutes ont été prises en compte.`,
  'oil/grade-same': ({ grade }) => `L’étiquette indique ${grade}, comme l’exige le manuel.`,
  'oil/multigrade-covers': ({ permitted, offered }) =>
    `${offered} respecte toutes les limites de ${permitted}, et aussi celles d’un autre grade.`,
  'oil/grade-differs': ({ permitted, offered }) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${offered}.`,
  'oil/hot-grade-thicker': ({ permitted, offered }) =>
    `Le manuel exige ${permitted}, sans grade à chaud ; l’étiquette indique ${offered}, bien plus épais à chaud. Demander au constructeur de la machine.`,
  'oil/grade-renamed': ({ permitted, offered, system }) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${offered}. Les éditions de ${system} découpent ces grades différemment : déterminer l’édition voulue par le manuel.`,
  'oil/winter-grade-missing': ({ permitted, offered }) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${offered}, sans grade d’hiver.`,
  'oil/winter-grade-colder': ({ permitted, offered }) =>
    `${offered} est plus fluide à froid que ${permitted}, cité par le manuel. Demander si c’est autorisé.`,
  'oil/winter-grade-warmer': ({ permitted, offered }) =>
    `${offered} est trop épais à froid : le manuel exige ${permitted}.`,
  'oil/grade-not-on-label': ({ permitted }) =>
    `L’étiquette ne donne pas de grade ; le manuel exige ${permitted}. Voir la fiche du produit.`,
  'oil/systems-differ': ({ permitted, offered }) =>
    `${permitted} et ${offered} sont des grades de systèmes différents ; aucun ne remplace l’autre.`,
  'oil/viscosity-inside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} à ${say.quantity(at)} est dans les limites de ${grade}. La viscosité seule n’en fait pas ce grade : demander au fabricant de l’huile.`,
  'oil/viscosity-outside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} à ${say.quantity(at)} est hors des limites de ${grade}.`,
  'oil/label-contradicts-viscosity': ({ grade, viscosity, at }, say) =>
    `L’étiquette indique ${grade}, mais ${say.quantity(viscosity)} à ${say.quantity(at)} est hors de ce grade. L’une des deux valeurs est fausse.`,
  'oil/maker-fluid-named': ({ name }) => `L’étiquette cite ${quote(name)}.`,
  'oil/maker-fluid-not-named': ({ name, offered }) =>
    `Le manuel n’autorise que ${quote(name)}, et l’étiquette de ${quote(offered)} ne le cite pas. La même viscosité ne suffit pas.`,
  'oil/category-not-stated': () => 'Le manuel n’indique pas de catégorie de service.',
  'oil/category-on-label': ({ category }) => `L’étiquette indique ${category}, comme l’exige le manuel.`,
  'oil/category-not-on-label': ({ category }) =>
    `L’étiquette ne donne pas de catégorie de service ; le manuel exige ${category}. Voir la fiche du produit.`,
  'oil/category-differs': ({ permitted, offered }, say) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${say.list(offered)}.`,
  'oil/category-doubtful': ({ permitted, offered }, say) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${say.list(offered)}. On ne sait pas si l’une couvre l’autre : demander au fabricant de l’huile.`,
  'oil/category-harms-yellow-metal': ({ permitted, offered }, say) =>
    `Des pièces en bronze ou en laiton tournent dans cette huile. Le manuel exige ${permitted} ; les additifs de ${say.list(offered)} peuvent les attaquer. Prendre une huile ${permitted}.`,
  'oil/category-yellow-metal-unknown': ({ permitted, offered }, say) =>
    `Le manuel exige ${permitted} ; l’étiquette indique ${say.list(offered)}. La fiche technique n’indique pas si des pièces en bronze ou en laiton tournent dans cette huile. Demander au constructeur de la machine.`,
  'oil/category-higher-no-yellow-metal': ({ permitted, offered }, say) =>
    `${say.list(offered)} convient à un service plus dur que ${permitted}, et aucune pièce en bronze ou en laiton ne tourne dans cette huile.`,
  'oil/category-dual-rated': ({ permitted, offered }, say) =>
    `L’étiquette indique à la fois ${say.list(offered)}. Demander au fabricant de l’huile si elle peut servir là où le manuel exige ${permitted}.`,
  'oil/limited-slip-not-stated': () => 'Le manuel ne mentionne pas d’additif pour glissement limité.',
  'oil/limited-slip-fits': ({ limitedSlip }) =>
    limitedSlip === 'either'
      ? 'L’huile peut contenir ou non un additif pour glissement limité.'
      : limitedSlip === 'required'
        ? 'L’huile contient l’additif pour glissement limité qu’exige le manuel.'
        : 'L’huile est sans additif pour glissement limité, comme l’exige le manuel.',
  'oil/limited-slip-additive-missing': () =>
    'Le manuel exige un additif pour glissement limité, et cette huile n’en a pas.',
  'oil/limited-slip-additive-separate': ({ name }) =>
    `L’huile n’a pas d’additif pour glissement limité ; ${quote(name)} s’ajoute à part, comme le dit le manuel.`,
  'oil/limited-slip-additive-twice': ({ name }) =>
    `L’huile contient déjà un additif pour glissement limité, et le manuel ajoute ${quote(name)}. Demander au constructeur de la machine avant d’utiliser les deux.`,
  'oil/limited-slip-not-permitted': () =>
    'L’huile contient un additif pour glissement limité, et le manuel ne l’autorise pas.',
  'oil/limited-slip-not-mentioned': () =>
    'L’huile contient un additif pour glissement limité, et le manuel n’en mentionne pas. Demander au constructeur de la machine.',
  'oil/limited-slip-not-on-label': ({ limitedSlip }) =>
    `L’étiquette ne dit pas si l’huile contient un additif pour glissement limité ; selon le manuel : ${nameOf(LIMITED_SLIP, limitedSlip)}. Voir la fiche du produit.`,
  'oil/ambient-in-range': (params, say) =>
    `${say.quantity(params.ambient)} est dans la plage du manuel pour cette huile : ${writeRange(params, say)}.`,
  'oil/ambient-out-of-range': (params, say) =>
    `${say.quantity(params.ambient)} est hors de la plage du manuel pour cette huile : ${writeRange(params, say)}.`,
  'oil/ambient-not-given': (params, say) =>
    `Plage du manuel pour cette huile : ${writeRange(params, say)}. Donner la température ambiante.`,
  'oil/ambient-not-a-range': ({ printed }, say) =>
    `La fiche technique donne ${say.quantity(printed)} pour cette huile, ce n’est pas une plage. Vérifier dans le manuel.`,
  'oil/ambient-not-limited': () => 'Le manuel ne donne pas de plage de température pour cette huile.',
  'oil/oils-not-stated': () => 'La fiche technique n’indique pas d’huile. Voir le manuel.',
  'oil/no-oil-for-ambient': ({ ambient }, say) =>
    `Le manuel n’autorise aucune de ses huiles à ${say.quantity(ambient)}.`,
  'oil/viscosities-missing': ({ missing }) => {
    const names = missing.map((name) => (name === 'kv40' ? '40 °C' : '100 °C'))
    return `La viscosité à ${join(names, 'et à')} n’est pas connue. Voir la fiche du produit.`
  },
  'oil/viscosities-reversed': ({ kv40, kv100 }, say) =>
    `${say.quantity(kv40)} à 40 °C et ${say.quantity(kv100)} à 100 °C ne peuvent pas être la même huile : l’huile se fluidifie en chauffant.`,
  'oil/below-pour-point': ({ temperature, pourPoint }, say) =>
    `À ${say.quantity(temperature)}, l’huile est sous son point d’écoulement de ${say.quantity(pourPoint)}. La réchauffer d’abord.`,
  'oil/pour-point-not-stated': () => 'Le point d’écoulement n’est pas connu ; il n’a pas été contrôlé.',
  'oil/temperature-outside-range': ({ temperature, min, max }, say) =>
    `${say.quantity(temperature)} est hors de la plage de la formule, ${say.quantity(min)} à ${say.quantity(max)}.`,
  'oil/viscosity-outside-range': ({ viscosity, temperature, min, max }, say) =>
    viscosity === undefined
      ? `À ${say.quantity(temperature)}, la viscosité est hors de la plage de la formule, ${say.quantity(min)} à ${say.quantity(max)}.`
      : `${say.quantity(viscosity)} est hors de la plage de la formule, ${say.quantity(min)} à ${say.quantity(max)}.`,
  'oil/viscosity-by-d341': ({ kv40, kv100, temperature }, say) =>
    `Viscosité à ${say.quantity(temperature)} selon ASTM D341, d’après ${say.quantity(kv40)} à 40 °C et ${say.quantity(kv100)} à 100 °C.`,
  'oil/viscosity-index-undefined': ({ kv100, min }, say) =>
    `Il n’y a pas d’indice de viscosité sous ${say.quantity(min)} à 100 °C ; cette huile a ${say.quantity(kv100)}.`,
  'oil/viscosity-index-by-d2270': ({ procedure, kv40, kv100 }, say) =>
    `Indice de viscosité selon ASTM D2270, procédure ${procedure}, d’après ${say.quantity(kv40)} à 40 °C et ${say.quantity(kv100)} à 100 °C.`,
  'oil/density-missing': () => 'La masse volumique à 15 °C n’est pas connue. Voir la fiche du produit.',
  'oil/density-outside-range': ({ density, min, max }, say) =>
    `${say.quantity(density)} n’est pas une masse volumique d’huile lubrifiante ; le tableau va de ${say.quantity(min)} à ${say.quantity(max)}.`,
  'oil/density-by-d1250': ({ density15, temperature }, say) =>
    `Masse volumique à ${say.quantity(temperature)} selon ASTM D1250, huiles lubrifiantes, d’après ${say.quantity(density15)} à 15 °C.`,
}
