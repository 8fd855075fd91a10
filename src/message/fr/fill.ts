import type { Param } from '../../base/index.js'
import type { FillCodes } from '../../fill/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'
import { quote } from './words.js'

function writeLimits({ min, max }: { min?: Param; max?: Param }, say: Say): string {
  if (min === undefined) return `au plus ${say.quantity(max)}`
  return max === undefined ? `au moins ${say.quantity(min)}` : `${say.quantity(min)} à ${say.quantity(max)}`
}

/** `0,09 L de moins que` or `0,09 L de plus que`: a minus sign in a sentence is easily missed. */
function writeDifference(
  { value, unit }: FillCodes['fill/refill-level-decides']['difference'],
  say: Say,
): string {
  const size = { value: Math.abs(Number(value)), unit }
  return `${say.quantity(size)} de ${Number(value) < 0 ? 'moins' : 'plus'} que`
}

const METHOD_NAMES: Readonly<Record<string, string>> = {
  'to level hole': 'l’orifice de niveau',
  dipstick: 'la jauge',
  'sight glass': 'le voyant',
}

export const fillTexts: Texts<FillCodes> = {
  'fill/hose-not-below-funnel': () =>
    'Le bout du tuyau n’est pas plus bas que l’entonnoir ; le tuyau ne se vide jamais. Lever l’entonnoir.',
  'fill/drop-longer-than-hose': ({ drop, length }, say) =>
    `Le tuyau mesure ${say.quantity(length)}, moins que sa hauteur de chute de ${say.quantity(drop)}. Corriger l’outillage.`,
  'fill/bore-wider-than-funnel': ({ bore, diameter }, say) =>
    `Le diamètre intérieur du tuyau, ${say.quantity(bore)}, n’est pas plus petit que celui de l’entonnoir, ${say.quantity(diameter)}. Corriger l’outillage.`,
  'fill/measure-outside-range': ({ name, given, min, max }, say) =>
    `${quote(name)} vaut ${say.quantity(given)} ; le temps de versement ne se calcule que de ${say.quantity(min)} à ${say.quantity(max)}.`,
  'fill/flow-not-laminar': ({ reynolds, limit }, say) =>
    `L’écoulement peut ne pas être laminaire (nombre de Reynolds ${say.number(reynolds, 0)}, limite ${say.number(limit)}) ; aucun temps de versement n’est calculé.`,
  'fill/entrance-longer-than-hose': ({ entrance, length }, say) =>
    `L’écoulement ne devient régulier qu’après ${say.quantity(entrance)}, mais le tuyau mesure ${say.quantity(length)} ; aucun temps de versement n’est calculé.`,
  'fill/funnel-too-small': ({ fillings, limit }, say) =>
    `L’entonnoir doit être rempli ${say.number(fillings)} fois (limite ${say.number(limit)}) ; aucun temps de versement n’est calculé. Prendre un entonnoir plus grand.`,
  'fill/flow-laminar': ({ reynolds, limit }, say) =>
    `L’écoulement est laminaire : nombre de Reynolds ${say.number(reynolds, 1)}, limite ${say.number(limit)}.`,
  'fill/kinetic-correction': ({ seconds }, say) =>
    `L’accélération et l’entrée du tuyau ajoutent ${say.number(seconds, 1)} s.`,
  'fill/several-fillings': ({ fillings, funnel }, say) =>
    `L’entonnoir contient ${say.quantity(funnel)} et se remplit ${say.number(fillings)} fois, chaque fois une fois vide. Le versement est plus rapide s’il est tenu plein.`,
  'fill/hose-never-full': ({ hose }, say) =>
    `Le tuyau contient ${say.quantity(hose)}, plus que la quantité versée ; il ne se remplit jamais.`,
  'fill/wall-film-not-counted': () =>
    'Le film d’huile dans l’entonnoir et le tuyau n’est pas compté. Laisser goutter.',
  'fill/fill-opening-closed': () =>
    'Le bouchon de remplissage est en place, l’air ne peut pas entrer : aucun temps de vidange n’est calculé. Le déposer.',
  'fill/drain-is-the-only-opening': () =>
    'L’air ne peut entrer que par l’orifice de vidange : aucun temps de vidange n’est calculé.',
  'fill/breather-blocked': () => 'Le reniflard est bouché. Le dégager d’abord.',
  'fill/breather-not-checked': () => 'Le reniflard n’a pas été contrôlé. S’assurer qu’il est dégagé.',
  'fill/drain-time-is-a-minimum': () =>
    'Le temps de vidange est un minimum : aucun carter ne se vide plus vite.',
  'fill/wait-for-single-drips': () => 'Laisser couler jusqu’au goutte-à-goutte.',
  'fill/no-containers': ({ short }, say) =>
    `Pas d’huile adaptée dans le stock. Se procurer ${say.quantity(short)}.`,
  'fill/opened-first': ({ container, taken }, say) =>
    `Prendre d’abord ${say.quantity(taken)} dans ${quote(container)}, déjà entamé.`,
  'fill/containers-left-over': ({ oil, left }, say) =>
    `Il reste ${say.quantity(left)} de ${quote(oil)} dans le dernier récipient.`,
  'fill/containers-exact': ({ oil }) => `Il ne reste rien de ${quote(oil)}.`,
  'fill/containers-short': ({ oil, short }, say) =>
    `Pas assez de ${quote(oil)} dans le stock : il manque ${say.quantity(short)}. En acheter.`,
  'fill/containers-not-searched-fully': ({ tried }, say) =>
    `Trop de façons de combiner les récipients : la meilleure des ${say.number(tried)} premières est utilisée.`,
  'fill/other-oil-not-mixed': ({ oil, other }) =>
    `${quote(other)} reste en stock : pas de mélange avec ${quote(oil)}.`,
  'fill/no-vessel': () => 'Il n’y a pas de récipient gradué. S’en procurer un.',
  'fill/vessel-too-coarse': ({ vessel, error, tolerance }, say) =>
    `${quote(vessel)} n’est pas assez précis : l’erreur peut être de ${say.quantity(error)} ; la limite est de ${say.quantity(tolerance)}.`,
  'fill/vessel-without-marks': ({ vessel }) =>
    `${quote(vessel)} n’a pas de graduation. Corriger l’outillage.`,
  'fill/vessel-too-large': ({ vessel, lowestMark }, say) =>
    `La quantité est sous le repère le plus bas de ${quote(vessel)}, ${say.quantity(lowestMark)}.`,
  'fill/vessel-too-many-pours': ({ vessel, limit }, say) =>
    `${quote(vessel)} doit être rempli plus de ${say.number(limit)} fois.`,
  'fill/vessel-accurate-enough': ({ vessel, error, tolerance }, say) =>
    `${quote(vessel)} mesure à ${say.quantity(error)} près ; la limite est de ${say.quantity(tolerance)}.`,
  'fill/vessel-in-several-pours': ({ vessel, pours }, say) =>
    `Mesurer avec ${quote(vessel)} en ${say.number(pours)} fois.`,
  'fill/tolerance-not-stated': ({ error }, say) =>
    `Le manuel n’indique pas de tolérance pour la quantité. Le meilleur récipient mesure à ${say.quantity(error)} près.`,
  'fill/no-pan': () => 'Il n’y a pas de bac de vidange. S’en procurer un.',
  'fill/pan-large-enough': ({ pan, total, size }, say) =>
    `${quote(pan)} contient ${say.quantity(size)} ; cette intervention vidange ${say.quantity(total)}.`,
  'fill/pan-nearly-full': ({ pan, percent }, say) =>
    `${quote(pan)} sera rempli à ${say.number(percent)} %. Le porter avec précaution, ou le vider entre les vidanges.`,
  'fill/empty-pan-between-drains': ({ pan, total, size }, say) =>
    `Cette intervention vidange ${say.quantity(total)} ; ${quote(pan)} contient ${say.quantity(size)}. Le vider entre les vidanges.`,
  'fill/pan-too-small': ({ largest, size }, say) =>
    `${say.quantity(largest)} coulent d’un coup ; le plus grand bac contient ${say.quantity(size)}. Se procurer un bac plus grand.`,
  'fill/refill-not-stated': () =>
    'La fiche technique n’indique pas de quantité de remplissage. Voir le manuel.',
  'fill/refill-as-printed': ({ refilled, printed }, say) =>
    `Rempli : ${say.quantity(refilled)} ; le manuel indique ${say.quantity(printed)}.`,
  'fill/refill-inside-band': ({ refilled, ...band }, say) =>
    `Rempli : ${say.quantity(refilled)} ; le manuel admet ${writeLimits(band, say)}.`,
  'fill/refill-outside-band': ({ refilled, min, max }, say) =>
    `Rempli : ${say.quantity(refilled)} ; le manuel admet ${writeLimits({ ...(min && { min }), ...(max && { max }) }, say)}. Corriger la quantité.`,
  'fill/refill-band-not-stated': ({ refilled, printed, difference }, say) =>
    `Rempli : ${say.quantity(refilled)}, ${writeDifference(difference, say)} ${say.quantity(printed)}, indiqué par le manuel sans tolérance.`,
  'fill/refill-level-decides': ({ difference, method }, say) => {
    const decider = METHOD_NAMES[method] === undefined ? quote(method) : nameOf(METHOD_NAMES, method)
    return Number(difference.value) === 0
      ? `C’est ${decider} qui décide ; rempli : exactement la quantité indiquée.`
      : `C’est ${decider} qui décide ; rempli : ${writeDifference(difference, say)} la quantité indiquée.`
  },
  'fill/refill-far-off': ({ difference, percent, limit }, say) =>
    `Arrêter : rempli ${writeDifference(difference, say)} la quantité indiquée (${say.number(percent, 0)} % ; la limite est de ${say.number(limit)} %). Contrôler que la machine est de niveau et qu’il n’est pas resté d’ancienne huile.`,
}
