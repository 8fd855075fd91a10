import type { SealCodes } from '../../seal/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { quote, writeNewSeal, writeTheSeal, writeThisSeal } from './words.js'

const OPENING_REASONS: Readonly<Record<string, string>> = {
  'cracked loose': 'Un bouchon débloqué compte comme ouvert.',
  'level check': 'Le bouchon est ouvert pour contrôler le niveau.',
}

/** Oils that touch a seal, with their article. */
const MEDIUMS: Readonly<Record<string, string>> = {
  'mineral gear oil': 'l’huile minérale pour engrenages',
  'hypoid EP oil': 'l’huile hypoïde EP',
}
const writeMedium = (medium: string) => nameOf(MEDIUMS, medium)
const writeMaterial = (material: string) => nameOf(cardWords.sealMaterials, material)

export const sealTexts: Texts<SealCodes> = {
  'seal/crush-washer-every-opening': ({ how }) =>
    `${OPENING_REASONS[how] ?? 'Le bouchon est déposé.'} Monter une rondelle à écraser neuve.`,
  'seal/reuse-stated': () =>
    'Le manuel permet de réutiliser cette rondelle si elle est encore bonne. En cas de doute, en monter une neuve.',
  'seal/replace-not-stated': ({ kind }) =>
    `Le manuel ne dit pas quand remplacer ${writeTheSeal(kind)}. Monter ${writeNewSeal(kind)}.`,
  'seal/sheet-says-every-opening': ({ kind }) => `Le manuel exige ${writeNewSeal(kind)} à chaque ouverture.`,
  'seal/sheet-says-on-condition': ({ kind }) =>
    `Le manuel permet de réutiliser ${writeThisSeal(kind)} en bon état. À contrôler.`,
  'seal/apply-new-sealant': ({ product }) =>
    `Retirer l’ancien produit d’étanchéité et appliquer ${quote(product)}.`,
  'seal/apply-new-liquid-gasket': ({ product }) =>
    `Retirer l’ancien joint et appliquer un nouveau cordon de ${quote(product)}.`,
  'seal/not-stated': () => 'La fiche technique n’indique pas de joint. Voir le manuel, et préparer un joint.',
  'seal/look-for-cuts': () => 'Ni coupures, ni entailles, ni déchirures.',
  'seal/look-for-flattening': () => 'Pas aplati.',
  'seal/look-for-hardness': () => 'Pas durci, et sans craquelures une fois plié.',
  'seal/look-for-swelling': () => 'Ni gonflé ni ramolli.',
  'seal/look-at-faces': () => 'Aucune rayure en travers de la face.',
  'seal/look-at-bonded-lip': () => 'La lèvre de caoutchouc est intacte et tient bien dans sa bague.',
  'seal/thread-unreadable': ({ thread }) => `Filetage inconnu ${quote(thread)}.`,
  'seal/size-not-stated': () => 'La taille de la rondelle n’est pas indiquée.',
  'seal/taper-thread-takes-no-washer': ({ thread }) =>
    `${thread} est un filetage conique : l’étanchéité se fait dans le filetage. Ne pas monter de rondelle.`,
  'seal/pipe-size-not-known': ({ thread }) => `Le diamètre de ${thread} n’est pas connu.`,
  'seal/ring-held-on-plug': ({ thread }) =>
    `La bague est tenue sur le bouchon, derrière son filetage ${thread} ; demander sa taille au fabricant du bouchon.`,
  'seal/washer-in-table': ({ thread, washer }) => `${washer} est une taille DIN 7603 pour ${thread}.`,
  'seal/washer-plausible': ({ thread, washer }) =>
    `${washer} passe sur ${thread} ; ce n’est pas une des tailles DIN 7603 du tableau.`,
  'seal/washer-bore-too-small': ({ thread, inside, major }, say) =>
    `Le diamètre intérieur de la rondelle, ${say.quantity(inside)}, ne passe pas sur ${thread}, diamètre ${say.quantity(major)}.`,
  'seal/washer-bore-too-large': ({ thread, inside, largest }, say) =>
    `Le diamètre intérieur de la rondelle, ${say.quantity(inside)}, est trop grand pour ${thread} ; au-delà de ${say.quantity(largest)}, elle ne reste pas centrée.`,
  'seal/washer-rim-too-narrow': ({ inside, outside, smallest }, say) =>
    `Une rondelle de ${say.quantity(inside)} intérieur et ${say.quantity(outside)} extérieur est trop étroite pour étancher. Le diamètre extérieur doit être d’au moins ${say.quantity(smallest)}.`,
  'seal/washer-thickness-doubtful': ({ thickness, min, max }, say) =>
    `Une épaisseur de ${say.quantity(thickness)} est inhabituelle ; ${say.quantity(min)} à ${say.quantity(max)} est habituel.`,
  'seal/o-ring-agrees': ({ designation, inside, section }, say) =>
    `${designation} : diamètre intérieur ${say.quantity(inside)}, section ${say.quantity(section)}.`,
  'seal/o-ring-differs': ({ designation, inside, section }, say) =>
    `La taille ne correspond pas à ${designation} : diamètre intérieur ${say.quantity(inside)}, section ${say.quantity(section)}.`,
  'seal/o-ring-found': ({ designation }) => `C’est la taille de ${designation}.`,
  'seal/o-ring-not-in-table': ({ designation }) =>
    `${designation} n’est pas une des tailles AS568 et JIS B 2401 du tableau. La chercher dans la norme.`,
  'seal/o-ring-size-not-in-table': () =>
    'La taille n’est pas une des tailles AS568 et JIS B 2401 du tableau.',
  'seal/o-ring-not-described': () => 'Ni la taille ni le numéro du joint torique n’est indiqué.',
  'seal/material-not-stated': () => 'La matière du joint n’est pas indiquée.',
  'seal/material-unsuitable': ({ material, medium }) =>
    `${capitalize(writeMaterial(material))} gonfle dans ${writeMedium(medium)}. Ne jamais en monter.`,
  'seal/material-poor': ({ material, medium }) =>
    `${capitalize(writeMaterial(material))} résiste mal à ${writeMedium(medium)}. Demander au fabricant du joint.`,
  'seal/material-suitable': ({ material, medium, min, max }, say) =>
    `${capitalize(writeMaterial(material))} résiste à ${writeMedium(medium)} de ${say.quantity(min)} à ${say.quantity(max)}.`,
  'seal/above-continuous-limit': ({ material, medium, temperature, max }, say) =>
    `Dans ${writeMedium(medium)}, ${writeMaterial(material)} tient jusqu’à ${say.quantity(max)} en service continu ; la température de service, ${say.quantity(temperature)}, est plus élevée. Demander au fabricant du joint.`,
  'seal/material-limits-not-known': ({ material }) =>
    `Les limites de température de ${writeMaterial(material)} ne sont pas connues. Demander au fabricant du joint.`,
  'seal/temperature-needs-special-compound': ({ material, temperature, min, max }, say) =>
    `À ${say.quantity(temperature)}, seuls des mélanges spéciaux de ${writeMaterial(material)} tiennent ; la plage habituelle est de ${say.quantity(min)} à ${say.quantity(max)}. Demander au fabricant du joint.`,
  'seal/temperature-outside-material': ({ material, temperature, min, max }, say) =>
    `${say.quantity(temperature)} est hors de la plage de ${writeMaterial(material)}, ${say.quantity(min)} à ${say.quantity(max)}.`,
  'seal/in-stock': ({ name, count }, say) => `Prendre ${say.number(count)} × ${name} dans le stock.`,
  'seal/buy': ({ count }, say) => `Acheter ${say.number(count)}.`,
  'seal/keep-spare': ({ count }, say) =>
    `Préparer ${say.count(count, 'pièce de rechange', 'pièces de rechange')} au cas où l’ancienne ne serait pas bonne.`,
  'seal/stock-may-match': ({ name }) =>
    `${quote(name)} dans le stock est peut-être la même pièce. À vérifier.`,
}
