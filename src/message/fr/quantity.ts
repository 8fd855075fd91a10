import { type QuantityCodes, unitSymbol } from '../../quantity/index.js'
import type { Texts } from '../catalogue.js'
import { join } from '../phrases.js'
import { quote } from './words.js'

const listSymbols = (candidates: readonly Parameters<typeof unitSymbol>[0][]): string =>
  join(candidates.map(unitSymbol), 'ou')

export const quantityTexts: Texts<QuantityCodes> = {
  'quantity/text-is-empty': () => 'Une grandeur est attendue, il n’y a rien.',
  'quantity/text-is-too-long': ({ length, longest }, say) =>
    `Le texte a ${say.number(length)} caractères ; la limite est de ${say.number(longest)}.`,
  'quantity/number-is-missing': ({ text }) => `Un nombre est attendu d’abord, il y a ${quote(text)}.`,
  'quantity/superscript-digit': ({ text, without }) =>
    `${quote(text)} a un chiffre en exposant, qui ne fait pas partie du nombre. Écrire ${quote(without)}, et la note à part.`,
  'quantity/number-is-unreadable': ({ text }) =>
    `Nombre illisible dans ${quote(text)}. Écrire jusqu’à neuf chiffres, un signe décimal, jusqu’à six décimales, sans zéro en tête.`,
  'quantity/decimal-mark-is-unclear': ({ text, withPoint, withComma }) =>
    `${quote(text)} peut signifier ${withPoint} ou ${withComma}. Préciser si la virgule ou le point est le signe décimal.`,
  'quantity/fraction-is-rounded': ({ text, value }) =>
    `La fraction dans ${quote(text)} n’a pas de valeur décimale exacte ; ${value} est utilisé.`,
  'quantity/value-is-negative': ({ quantity }, say) =>
    `${say.quantity(quantity)} est négatif ; seule une température peut l’être.`,
  'quantity/limits-reversed': ({ min, max }) =>
    `Le minimum ${min} dépasse le maximum ${max}. Mettre le plus petit en premier.`,
  'quantity/unit-is-missing': ({ text }) =>
    `Pas d’unité dans ${quote(text)}. En écrire une, par exemple 20 N·m.`,
  'quantity/unit-is-unknown': ({ text }) => `Unité inconnue ${quote(text)}.`,
  'quantity/unit-is-ambiguous': ({ text, candidates }) =>
    candidates.length === 1
      ? `${quote(text)} seul n’est pas une unité. S’agit-il de ${listSymbols(candidates)} ?`
      : `${quote(text)} est ambigu : ${listSymbols(candidates)}. Écrire l’unité voulue.`,
  'quantity/ratio-of-units': ({ text, candidates }) =>
    `${quote(text)} est une unité divisée par une autre ; un couple est une force multipliée par une longueur. S’agit-il de ${listSymbols(candidates)} ?`,
  'quantity/unit-in-wrong-case': ({ text, candidates }) =>
    `Majuscules et minuscules changent le sens de ${quote(text)}. S’agit-il de ${listSymbols(candidates)} ?`,
  'quantity/mass-unit-for-force': ({ text, unit }) =>
    `${quote(text)} a une unité de masse au lieu d’une unité de force ; lu comme ${unitSymbol(unit)}.`,
  'quantity/unit-of-other-measure': ({ unit, measure }) =>
    `${unitSymbol(unit)} n’est pas une unité de la grandeur attendue : ${MEASURE_NAMES[measure]}.`,
  'quantity/text-after-quantity': ({ text }) =>
    `Texte inattendu après la grandeur : ${quote(text)}. Écrire une seule grandeur.`,
  'quantity/printed-figures-differ-slightly': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} diffèrent de ${say.number(missPercent, 2)} %. Vérifier dans le manuel ; une des deux valeurs est peut-être mal imprimée.`,
  'quantity/printed-figures-slip': ({ first, second, slip, ratio }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} diffèrent d’un facteur ${ratio} : ${SLIP_NAMES[slip]}. Déterminer la bonne valeur avant usage.`,
  'quantity/printed-figures-differ': ({ first, second, missPercent }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} ne peuvent pas être la même valeur ; l’écart est de ${say.number(missPercent, 2)} %. Vérifier dans le manuel.`,
  'quantity/printed-figures-not-comparable': ({ first, second }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} ne sont pas des limites de même sorte ; elles ne peuvent pas être comparées.`,
}

const SLIP_NAMES: { readonly [Slip in QuantityCodes['quantity/printed-figures-slip']['slip']]: string } = {
  'foot for inch': 'livres-pouces et livres-pieds ont peut-être été confondues',
  'kilogram-force for newton': 'kilogramme-force et newton ont peut-être été confondus',
  'number copied between pound-foot and newton metre':
    'un nombre en lbf·ft ou en N·m a peut-être été copié sans conversion, ou converti deux fois',
  'US for imperial measure': 'mesures américaines et impériales ont peut-être été confondues',
  'US for imperial fluid ounce': 'onces liquides américaines et impériales ont peut-être été confondues',
}

export const MEASURE_NAMES: {
  readonly [M in QuantityCodes['quantity/unit-of-other-measure']['measure']]: string
} = {
  torque: 'couple',
  volume: 'volume',
  length: 'longueur',
  distance: 'distance',
  force: 'force',
  pressure: 'pression',
  temperature: 'température',
  temperatureDifference: 'différence de température',
  mass: 'masse',
  duration: 'temps',
  angle: 'angle',
  speed: 'vitesse',
  kinematicViscosity: 'viscosité cinématique',
  dynamicViscosity: 'viscosité dynamique',
  density: 'masse volumique',
}
