import type { ThreadCodes } from '../../thread/index.js'
import type { Texts } from '../catalogue.js'
import { join, nameOf } from '../phrases.js'
import { quote } from './words.js'

/** Materials of the housing around a plug. */
const HOUSINGS: Readonly<Record<string, string>> = {
  steel: 'acier',
  'cast iron': 'fonte',
  aluminium: 'aluminium',
  'not stated': 'non indiqué',
}

export const threadTexts: Texts<ThreadCodes> = {
  'thread/unknown-thread': ({ text }) =>
    `${quote(text)} n’est pas un filetage connu. L’écrire comme M18x1.5, G 1/2, R 1/2, 1/2-14 NPT ou 3/8-16 UNC.`,
  'thread/parallel-or-taper': ({ text, candidates }) =>
    `${quote(text)} peut être cylindrique ou conique : ${join(candidates, 'ou')}. Déterminer lequel, et l’écrire.`,
  'thread/pitch-not-known': ({ text, diameter }) =>
    `${quote(text)} ne donne pas de pas, et aucun pas gros de M${diameter} n’est connu. Écrire le pas, comme dans M18x1.5.`,
  'thread/pitch-too-coarse': ({ text, pitch, diameter }) =>
    `${quote(text)} : un pas de ${pitch} mm est trop gros pour ${diameter} mm. Vérifier les deux valeurs.`,
  'thread/size-not-known': ({ text, size, system }) =>
    `${quote(text)} : aucune taille ${size} n’est connue dans le système ${system}. Vérifier la taille dans le manuel.`,
  'thread/threads-per-inch-differ': ({ text, stated, usual }) =>
    `${quote(text)} donne ${stated} filets par pouce ; cette taille en a ${usual}. Vérifier ce qui est voulu.`,
  'thread/unusual-pitch': ({ text, pitch, diameter }) =>
    `${quote(text)} : ${pitch} mm est un pas inhabituel sur ${diameter} mm. Le vérifier dans le manuel.`,
  'thread/too-long': ({ length, max }, say) =>
    `Ce texte a ${say.number(length)} caractères ; un filetage en a au plus ${say.number(max)}.`,
  'thread/plug-band': ({ thread, housing, min, max }, say) =>
    `Les bouchons ${thread} (carter : ${nameOf(HOUSINGS, housing)}) se serrent d’habitude de ${say.quantity(min)} à ${say.quantity(max)}. Cette large plage, tirée de tableaux publiés, ne sert qu’à trouver de mauvaises unités.`,
  'thread/plug-not-in-table': ({ thread, housing }) =>
    `Aucun couple publié n’est connu pour un bouchon ${thread} (carter : ${nameOf(HOUSINGS, housing)}) ; le couple n’est pas comparé.`,
  'thread/taper-plug': ({ thread }) =>
    `${thread} est un filetage conique : il se serre en tours, et le tableau des couples ne s’applique pas.`,
}
