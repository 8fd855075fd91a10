import type { Param } from '../../base/index.js'
import type { TorqueCodes } from '../../torque/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeUnitName } from '../phrases.js'
import { quote } from './words.js'

type BandEnds = { min: Param; max: Param }

function writeBand({ min, max }: BandEnds, say: Say): string {
  return `${say.quantity(min)} à ${say.quantity(max)}`
}

const BASES = { reading: 'de la lecture', 'full scale': 'de la pleine échelle' } as const

function writeError(percent: number, of: keyof typeof BASES, say: Say): string {
  return `±${say.number(percent)} % ${BASES[of]}`
}

function turnsText(min: string, max?: string): string {
  return max === undefined ? `au moins ${min} tours` : `${min} à ${max} tours`
}

const WRENCH_TYPES: Readonly<Record<string, string>> = {
  click: 'à déclenchement',
  dial: 'à cadran',
  beam: 'à aiguille',
  electronic: 'électronique',
}

function writeAngle(
  { nominal, min, max }: { nominal?: string; min?: string; max?: string },
  say: Say,
): string {
  const writeDegrees = (value: string) => say.quantity({ value, unit: 'deg' })
  if (nominal !== undefined) return writeDegrees(nominal)
  if (min !== undefined && max !== undefined) return `${writeDegrees(min)} à ${writeDegrees(max)}`
  if (min !== undefined) return `au moins ${writeDegrees(min)}`
  return max === undefined ? '–' : `au plus ${writeDegrees(max)}`
}

function writeNearestMarks(below: Param | undefined, above: Param | undefined, say: Say): string {
  const marks = [below, above].flatMap((mark) => (mark === undefined ? [] : [say.quantity(mark)]))
  return marks.length === 0 ? '' : ` Repères les plus proches : ${say.list(marks)}.`
}

export const torqueTexts: Texts<TorqueCodes> = {
  'torque/setting-chosen': ({ setting, aim, from }, say) =>
    `Régler ${say.quantity(setting)} : le repère de la plage le plus proche ${from === 'nominal' ? 'de la valeur nominale' : 'de son milieu'}, ${say.quantity(aim)}.`,
  'torque/nearest-mark': ({ setting, nominal, percent }, say) => {
    const difference = Math.abs(percent) < 0.05 ? 'moins de 0,1' : say.number(Math.abs(percent), 1)
    return `Régler ${say.quantity(setting)} : le repère le plus proche, ${difference} % ${percent < 0 ? 'au-dessous' : 'au-dessus'} de la valeur du manuel, ${say.quantity(nominal)}.`
  },
  'torque/actual-torque-in-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Avec ${writeError(percent, of, say)}, le couple réel est de ${writeBand(trueBand, say)}, dans la plage ${writeBand(stated, say)}.`,
  'torque/actual-torque-out-of-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Avec ${writeError(percent, of, say)}, le couple réel peut être de ${writeBand(trueBand, say)}, hors de la plage ${writeBand(stated, say)}. Prendre une clé plus précise.`,
  'torque/low-on-scale': ({ setting, highest, sharePercent }, say) =>
    `${say.quantity(setting)} n’est que ${say.number(sharePercent, 1)} % de la pleine échelle (${say.quantity(highest)}). Prendre si possible une clé plus petite.`,
  'torque/below-lowest-mark': ({ required, lowest }, say) =>
    `${say.quantity(required)} est sous le repère le plus bas de la clé, ${say.quantity(lowest)}.`,
  'torque/below-fifth-of-scale': ({ required, from, highest }, say) =>
    `${say.quantity(required)} est sous ${say.quantity(from)}, 20 % de la pleine échelle (${say.quantity(highest)}).`,
  'torque/below-declared-range': ({ required, from }, say) =>
    `${say.quantity(required)} est sous la plage déclarée de la clé, qui commence à ${say.quantity(from)}.`,
  'torque/above-highest-mark': ({ required, highest }, say) =>
    `${say.quantity(required)} est au-dessus du repère le plus haut de la clé, ${say.quantity(highest)}.`,
  'torque/above-declared-range': ({ required, to }, say) =>
    `${say.quantity(required)} est au-dessus de la plage déclarée de la clé, qui finit à ${say.quantity(to)}.`,
  'torque/no-mark-in-band': ({ band: { min, max }, below, above, unit, error: wrenchError }, say) =>
    min.value === max.value
      ? `${
          wrenchError === undefined
            ? `La clé n’a pas de repère à ${say.quantity(min)}.`
            : `Aucun repère de l’échelle de la clé en ${writeUnitName(unit, say)} n’est dans l’erreur de la clé (${writeError(wrenchError.percent, wrenchError.of, say)}) autour de ${say.quantity(min)}.`
        }${writeNearestMarks(below, above, say)} Si une erreur plus grande est permise, la donner comme tolérance (tolerancePercent, --tolerance).`
      : `Aucun repère de l’échelle de la clé en ${writeUnitName(unit, say)} n’est dans la plage ${writeBand({ min, max }, say)}.${writeNearestMarks(below, above, say)}`,
  'torque/resolution-too-coarse': ({ required, from, step }, say) =>
    `À ${say.quantity(required)}, le pas d’affichage de ${say.quantity(step)} dépasse le quart de l’erreur admise. N’utiliser cette clé qu’à partir de ${say.quantity(from)}.`,
  'torque/error-as-large-as-setting': ({ required, error: size }, say) =>
    `L’erreur de la clé est un pourcentage de la pleine échelle : ${say.quantity(size)}, autant que ${say.quantity(required)}. Prendre une clé plus petite.`,
  'torque/band-not-stated': ({ nominal }, say) =>
    `Le manuel imprime ${say.quantity(nominal)} sans tolérance.`,
  'torque/tolerance-from-caller': ({ nominal, percent, band: result }, say) =>
    `Le manuel imprime ${say.quantity(nominal)} sans tolérance ; ±${say.number(percent)} % donne ${writeBand(result, say)}. Cette tolérance est la vôtre, pas celle du manuel.`,
  'torque/one-limit-only': ({ limit, which }, say) =>
    `Le manuel ne donne qu’un couple ${which === 'minimum' ? 'minimal' : 'maximal'}, ${say.quantity(limit)} : aucun réglage ne peut être choisi. Voir le manuel.`,
  'torque/band-empty': ({ band: { min, max } }, say) =>
    `Le minimum ${say.quantity(min)} dépasse le maximum ${say.quantity(max)}. Corriger la fiche technique.`,
  'torque/not-stated': () => 'La fiche technique n’indique pas de couple. Voir le manuel.',
  'torque/by-turns': ({ min, max }) =>
    `Serrer en tours, pas au couple : ${turnsText(min, max)} après serrage à la main.`,
  'torque/angle-after-torque': ({ angle: size }, say) =>
    `Après le couple, tourner encore de ${writeAngle(size, say)}. Une clé dynamométrique ne mesure pas l’angle.`,
  'torque/iso-figure-unknown': ({ type }) =>
    `L’erreur admise par ISO 6789 n’est pas connue pour une clé ${nameOf(WRENCH_TYPES, type)}. Noter dans l’outillage la précision du fabricant en pour cent.`,
  'torque/stage': ({ stage, stages, reason }, say) =>
    `Palier ${say.number(stage)} sur ${say.number(stages)} : ${say.reason(reason)}`,
  'torque/adaptor-changes-setting': ({ setting, torque, ratio }, say) =>
    `Avec l’adaptateur, régler ${say.quantity(setting)} pour obtenir ${say.quantity(torque)} sur la fixation (facteur ${say.number(ratio, 4)}).`,
  'torque/extension-missing': () =>
    'La longueur de l’adaptateur manque ; le réglage ne peut pas être corrigé. Mesurer du centre du carré d’entraînement au centre de la fixation.',
  'torque/lever-length-missing': ({ extension }, say) =>
    `La longueur de la clé manque ; le réglage ne peut pas être corrigé pour un adaptateur de ${say.quantity(extension)}. Mesurer du centre du carré d’entraînement au milieu de la poignée.`,
  'torque/drive-does-not-reach': ({ wrench, required }) =>
    `La clé a un carré de ${wrench}, la douille demande ${required}, et aucun adaptateur de l’outillage ne les relie.`,
  'torque/usual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} est habituel pour un bouchon ${thread} (${writeBand(usual, say)}).`,
  'torque/unusual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} est inhabituel pour un bouchon ${thread} (${writeBand(usual, say)}).`,
  'torque/unit-slip': ({ torque, factor, becomes, meant }, say) =>
    `${say.quantity(torque)} ${factor.replace('.', ',')} donnerait ${say.quantity(becomes)}, une valeur habituelle.${meant === undefined ? '' : ` S’agit-il de ${say.quantity({ value: torque.value, unit: meant })} ?`} Vérifier dans le manuel.`,
  'torque/thread-missing': () =>
    'La fiche technique n’indique pas de filetage ; le couple ne peut pas être comparé aux valeurs habituelles.',
  'torque/thread-unreadable': ({ thread }) =>
    `Filetage inconnu ${quote(thread)} ; le couple ne peut pas être comparé aux valeurs habituelles.`,
  'torque/swapped-torques-fit-better': ({ fill, drain, fillThread, drainThread }, say) =>
    `Bouchon de remplissage ${fillThread} ${say.quantity(fill)}, bouchon de vidange ${drainThread} ${say.quantity(drain)} : échangés, ils conviendraient mieux à leurs filetages. Vérifier dans le manuel.`,
  'torque/plugs-not-swapped': ({ fill, drain }, say) =>
    `Bouchon de remplissage ${say.quantity(fill)} et bouchon de vidange ${say.quantity(drain)} : aucun signe d’échange.`,
  'torque/same-plug-figures': ({ fillThread, drainThread }) =>
    `Bouchon de remplissage ${fillThread} et bouchon de vidange ${drainThread} reçoivent d’habitude le même couple ; un échange ne se verrait pas.`,
  'torque/class-unknown': ({ propertyClass }) =>
    `La contrainte d’épreuve de la classe ${quote(propertyClass)} n’est pas connue.`,
  'torque/class-not-for-size': ({ propertyClass, thread, from, to }) =>
    `La contrainte d’épreuve de la classe ${propertyClass} est connue de ${from} à ${to} ; ${thread} n’en fait pas partie.`,
  'torque/class-not-for-thread': ({ propertyClass, thread }) =>
    `La classe ${propertyClass} ne s’applique pas à ${thread} : l’une est métrique, l’autre en pouces.`,
  'torque/proof-load': ({ stressMPa, area, load }, say) =>
    `Charge d’épreuve ${say.quantity(load)} : ${say.number(stressMPa, 0)} MPa sur ${say.number(area, 1)} mm².`,
  'torque/clamp-load': ({ torque, nutFactor, force }, say) =>
    `${say.quantity(torque)} avec un coefficient de couple de ${say.number(nutFactor)} donne une tension de vis d’environ ${say.quantity(force)}.`,
  'torque/above-proof': ({ max, proof }, say) =>
    `Avec la dispersion, la tension de vis peut atteindre ${say.quantity(max)}, plus que la charge d’épreuve de ${say.quantity(proof)}.`,
  'torque/below-proof': ({ max, proof }, say) =>
    `Même avec la dispersion, la tension de vis est d’au plus ${say.quantity(max)}, pas plus que la charge d’épreuve de ${say.quantity(proof)}.`,
  'torque/cycles-used-up': ({ used, limit }, say) =>
    `${say.number(used)} cycles sur ${say.number(limit)} effectués : envoyer la clé à l’étalonnage.`,
  'torque/cycles-left': ({ used, limit }, say) =>
    `${say.number(used)} cycles sur ${say.number(limit)} effectués.`,
  'torque/cycles-not-counted': ({ limit }, say) =>
    `Les cycles de cette clé ne sont pas comptés (limite ${say.number(limit)}) ; la limite de calendrier décide.`,
  'torque/calibration-date-missing': () => 'La date du dernier étalonnage manque. La noter dans l’outillage.',
  'torque/by-torque': () => 'La fiche technique indique un couple, pas des tours.',
  'torque/turns': ({ min, max }) => `Serrer de ${turnsText(min, max)} après serrage à la main.`,
  'torque/turns-without-maximum': ({ min }) =>
    `Serrer d’au moins ${min} tours après serrage à la main ; le manuel ne donne pas de maximum.`,
  'torque/turns-correct': ({ turns: done, min, max }, say) =>
    `${say.count(done, 'tour', 'tours')} : correct (${turnsText(min, max)}).`,
  'torque/turns-too-few': ({ turns: done, min }, say) =>
    `${say.count(done, 'tour', 'tours')} : trop peu ; le manuel dit au moins ${min}.`,
  'torque/turns-too-many': ({ turns: done, max }, say) =>
    `${say.count(done, 'tour', 'tours')} : trop ; le manuel dit au plus ${max}. Chercher une fissure avant de réutiliser.`,
  'torque/setting-not-a-mark': ({ set, below, above }, say) =>
    `Cette clé n’a pas de repère à ${say.quantity(set)}.${writeNearestMarks(below, above, say)}`,
}
