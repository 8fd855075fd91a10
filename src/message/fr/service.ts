import type { SupplyKind, ToolKind } from '../../procedure/index.js'
import type { PartName, ServiceCodes } from '../../service/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, join, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { DRIVE_NAMES, joinQuoted, quote, SIGNAL_WORDS, writeFactNames, writeOfMeter } from './words.js'

const SUPPLY_NAMES: Readonly<Record<SupplyKind | 'suction pump', string>> = {
  rags: 'chiffons',
  'gloves and goggles': 'gants et lunettes de protection',
  oil: 'huile',
  additive: 'additif',
  seal: 'joints neufs',
  sealant: 'produit d’étanchéité',
  'sample bottle': 'un flacon propre et sec avec son bouchon pour chaque prélèvement d’huile',
  solvent: 'solvant, et un bac pour y laver la crépine',
  'suction pump': 'une pompe d’aspiration dont le tuyau atteint le fond du carter',
  'used-oil container': 'un récipient fermé et marqué pour l’huile usagée',
}

const TOOL_NAMES: Readonly<Record<ToolKind, string>> = {
  chocks: 'cales',
  jack: 'cric',
  stands: 'chandelles',
  ramps: 'rampes',
  brush: 'brosse',
  'socket or key': 'douille ou clé',
  'drain pan': 'bac de vidange',
  'suction pump': 'pompe d’aspiration',
  scraper: 'grattoir',
  'measuring vessel': 'récipient gradué',
  'funnel and hose': 'entonnoir et tuyau',
  'torque wrench': 'clé dynamométrique',
  'breaker bar': 'barre de desserrage',
}

const writeRole = (role: string): string => nameOf(cardWords.roles, role).toLowerCase()

/** `rear gearcase, left: drain plug`. */
function writePart({ gearcase, part, instance }: PartName): string {
  const placeText = [gearcase, instance?.name].filter((word) => word !== undefined).join(', ')
  if (part === undefined) return placeText === '' ? 'la machine' : placeText
  return placeText === '' ? part : `${placeText} : ${part}`
}
const writeParts = (parts: readonly PartName[]): string => parts.map(writePart).join(' ; ')

/** `2019 à 2021`, `à partir de KA004512`. */
function writeRange(from: string | number | undefined, to: string | number | undefined, prefix = ''): string {
  if (from === undefined)
    return to === undefined ? `qui commencent par ${quote(prefix)}` : `jusqu’à ${prefix}${to}`
  return to === undefined ? `à partir de ${prefix}${from}` : `${prefix}${from} à ${prefix}${to}`
}

/** `80 à 95 h`, `au moins 80 h`; rounded to two digits after a word such as `environ`. */
function writeAmount(
  { min, max, unit }: { readonly min?: number; readonly max?: number; readonly unit: string },
  say: Say,
  about = '',
): string {
  const writeQuantity = (value: number) =>
    say.quantity({ value: about === '' ? value : Number(value.toPrecision(2)), unit })
  if (min === undefined) return max === undefined ? '' : `au plus ${writeQuantity(max)}`
  if (max === undefined) return `au moins ${writeQuantity(min)}`
  return writeQuantity(min) === writeQuantity(max)
    ? `${about}${writeQuantity(min)}`
    : `${about}${writeQuantity(min)} à ${writeQuantity(max)}`
}

export const serviceTexts: Texts<ServiceCodes> = {
  'service/part-not-known': ({ part, facts }, say) =>
    `On ne sait pas si cette machine a cette pièce (${writePart(part)}). À déterminer : ${say.list(writeFactNames(facts))}.`,
  'service/variant-not-known': ({ facts, candidates }, say) =>
    `La variante n’est pas connue : ${joinQuoted(candidates)}. À déterminer : ${say.list(writeFactNames(facts))}.`,
  'service/variant-contradicted': ({ candidates }) =>
    candidates.length === 0
      ? 'Les données du carnet ne conviennent à aucune variante de la fiche technique. Vérifier la plaque.'
      : `Le carnet se contredit : ses autres données conviennent à ${joinQuoted(candidates)}, pas à la variante qu’il cite. Vérifier la plaque.`,
  'service/figure-not-stated': ({ part, role }) =>
    role === 'fasteners'
      ? `${capitalize(writePart(part))} : nombre de fixations non indiqué. Les compter.`
      : `${capitalize(writePart(part))} : valeur non indiquée (${writeRole(role)}). Voir le manuel.`,
  'service/figure-not-known': ({ part, role, facts }, say) =>
    `${capitalize(writePart(part))} : cette valeur (${writeRole(role)}) dépend de ces données : ${say.list(writeFactNames(facts))}. Les déterminer d’abord.`,
  'service/torque-not-settled': ({ part }) =>
    `${capitalize(writePart(part))} : le couple est indiqué, mais aucun réglage de clé n’a été trouvé. Voir « ${cardWords.sections.tightening} ».`,
  'service/settings-need-toolbox': ({ parts }) =>
    `Pas d’outillage donné ; les couples indiqués n’ont pas de réglage de clé (${writeParts(parts)}). Donner un outillage.`,
  'service/due-not-known': ({ parts, service, reason }, say) =>
    `On ne sait pas si cet entretien est à faire : ${quote(service)} (${writeParts(parts)}). ${say.reason(reason)}`,
  'service/ambient-not-given': ({ part }) =>
    `Pas de température ambiante donnée ; huile non choisie selon la température (${writePart(part)}).`,
  'service/no-toolbox': () => 'Pas d’outillage donné : clés, récipient et bac non contrôlés.',
  'service/no-stock': () => 'Pas de stock donné : tout est à acheter.',
  'service/viscosity-not-known': ({ oil }) =>
    `La viscosité de ${quote(oil)} à cette température n’est pas connue ; aucun temps de versement n’est calculé.`,
  'service/oil-for-ambient': ({ oil, ambient }, say) =>
    `À ${say.quantity(ambient)}, la fiche technique autorise ${oil}.`,
  'service/several-suitable-oils': ({ part, oils, chosen }) =>
    `Plusieurs huiles du stock conviennent selon le manuel (${writePart(part)}) : ${joinQuoted(oils, 'et')}. Ce plan utilise ${quote(chosen)} ; noter l’huile versée.`,
  'service/oil-only-choice': ({ oil }) => `La fiche technique n’autorise que ${oil}.`,
  'service/no-oil-for-ambient': ({ part, ambient }, say) =>
    `Aucune huile de la fiche technique n’est autorisée à ${say.quantity(ambient)} (${writePart(part)}).`,
  'service/oil-does-not-meet': ({ container, oil, reason }, say) =>
    `${quote(container)} n’est pas ${oil}. ${say.reason(reason)}`,
  'service/ask-oil-maker': ({ container, oil, reason }, say) =>
    `Demander au fabricant de l’huile si ${quote(container)} peut remplacer ${oil}. ${say.reason(reason)}`,
  'service/no-suitable-oil': ({ part, oil, offered, reasons }, say) =>
    [
      `Pas d’huile adaptée dans le stock (${writePart(part)}) : exigé ${oil}, en stock ${joinQuoted(offered, 'et')}.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/no-wrench-fits': ({ part, reasons }, say) =>
    [
      `Aucune clé de l’outillage ne peut être réglée pour cette pièce (${writePart(part)}).`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/wrench-required': ({ from, to, count }, say) =>
    `Se procurer une clé dynamométrique de ${say.quantity({ kind: 'limits', min: String(from.value), max: String(to.value), unit: to.unit })}, pour ${say.count(count, 'serrage', 'serrages')}.`,
  'service/calibration-expired': ({ wrench, dueOn }, say) =>
    `L’étalonnage de ${quote(wrench)} a expiré le ${say.date(dueOn)}. Faire étalonner la clé avant usage.`,
  'service/calibration-cycles-used-up': ({ wrench, cycles, limit }, say) =>
    `${quote(wrench)} a fait ${say.number(cycles)} cycles depuis l’étalonnage (limite ${say.number(limit)}). Faire étalonner la clé.`,
  'service/scale-reversed': ({ wrench, lowest, highest }, say) =>
    `Échelle de ${quote(wrench)} : le repère le plus bas, ${say.quantity(lowest)}, dépasse le plus haut, ${say.quantity(highest)}. La clé n’est pas utilisée ; corriger l’outillage.`,
  'service/calibration-not-recorded': ({ wrench }) =>
    `L’outillage ne donne pas le dernier étalonnage de ${quote(wrench)}.`,
  'service/socket-found': ({ tool, size }) =>
    size === '' ? `${capitalize(tool)}.` : `${capitalize(tool)} convient pour ${size}.`,
  'service/adaptor-between': ({ adaptor, wrenches }) =>
    `Mettre ${quote(adaptor)} entre la douille et ${joinQuoted(wrenches, 'et')}. L’adaptateur est dans l’axe ; le réglage ne change pas.`,
  'service/socket-missing': ({ part, drive, size }) =>
    `L’outillage n’a pas d’outil pour cette empreinte : ${nameOf(DRIVE_NAMES, drive)}${size === '' ? '' : ` ${size}`} (${writePart(part)}).`,
  'service/turned-by-hand': ({ part }) => `À la main (${writePart(part)}).`,
  'service/drive-not-stated': ({ part }) =>
    `La fiche technique n’indique pas de taille d’outil (${writePart(part)}). La déterminer avant de partir.`,
  'service/vessel-too-coarse': ({ vessel, part, reason }, say) =>
    `${quote(vessel)} n’est pas assez précis (${writePart(part)}). ${say.reason(reason)}`,
  'service/no-vessel': ({ part }) => `L’outillage n’a pas de récipient gradué (${writePart(part)}).`,
  'service/pan-too-small': ({ pan, size, volume }, say) =>
    `${quote(pan)} (${say.quantity(size)}) est trop petit pour les ${say.quantity(volume)} de cette intervention. En apporter un plus grand, ou le vider entre les vidanges.`,
  'service/no-pan': ({ volume }, say) =>
    `L’outillage n’a pas de bac de vidange ; cette intervention vidange ${say.quantity(volume)}.`,
  'service/stands-too-few': ({ have, need }, say) =>
    `Chandelles nécessaires : ${say.number(need)} ; dans l’outillage : ${say.number(have)}.`,
  'service/stands-too-weak': ({ stands, rating, mass }, say) =>
    `${quote(stands)} : charge nominale ${say.quantity(rating)} par pièce ; la machine pèse ${say.quantity(mass)}. Ne pas les utiliser.`,
  'service/stands-strong-enough': ({ stands, rating, mass }, say) =>
    `${quote(stands)} : charge nominale ${say.quantity(rating)} par pièce ; la machine entière pèse ${say.quantity(mass)}.`,
  'service/stands-missing': ({ need }, say) =>
    `Chandelles nécessaires : ${say.number(need)} ; aucune dans l’outillage. Ne jamais compter sur un cric seul.`,
  'service/ramps-too-few': ({ have, need }, say) =>
    `Rampes nécessaires : ${say.number(need)} ; dans l’outillage : ${say.number(have)}.`,
  'service/ramps-too-weak': ({ ramps, rating, mass }, say) =>
    `${quote(ramps)} : charge nominale ${say.quantity(rating)} par pièce ; la machine pèse ${say.quantity(mass)}. Ne pas les utiliser.`,
  'service/ramps-strong-enough': ({ ramps, rating, mass }, say) =>
    `${quote(ramps)} : charge nominale ${say.quantity(rating)} par pièce ; la machine entière pèse ${say.quantity(mass)}.`,
  'service/ramps-missing': ({ need }, say) =>
    `Rampes nécessaires : ${say.number(need)} ; aucune dans l’outillage.`,
  'service/mass-not-stated': () =>
    'La fiche technique n’indique pas la masse de la machine : comparer la charge nominale des chandelles ou des rampes avec sa plaque.',
  'service/seal-every-opening': ({ count }, say) =>
    `${say.count(count, 'pièce neuve', 'pièces neuves')} : remplacer à chaque ouverture.`,
  'service/seal-replace-not-stated': ({ count }, say) =>
    `${say.count(count, 'pièce neuve', 'pièces neuves')} : le manuel ne dit pas quand remplacer.`,
  'service/access-not-stated': ({ part }) =>
    `${capitalize(writePart(part))} : accès non indiqué. Voir le manuel. Si la machine doit être levée, utiliser les points de levage du manuel et des chandelles prévues pour la charge. Ne jamais travailler sous une machine tenue par un cric seul.`,
  'service/seal-on-condition': ({ count }, say) =>
    `À contrôler, à réutiliser seulement en bon état ; préparer ${say.count(count, 'pièce de rechange', 'pièces de rechange')}.`,
  'service/seal-not-known': ({ part }) => `Le joint n’est pas connu (${writePart(part)}). Voir le manuel.`,
  'service/pour-through': ({ filler, oil, temperature }, say) =>
    `${capitalize(oil)} à ${say.quantity(temperature)} par ${quote(filler)}.`,
  'service/hose-bore-not-known': ({ filler }) =>
    `Diamètre intérieur du tuyau non connu (${filler}) ; aucun temps de versement n’est calculé. Le tuyau est vide quand rien ne goutte.`,
  'service/usual-hoses': ({ from, to, fastest, slowest }, say) =>
    `Environ ${say.number(Number(fastest.value))} à ${say.quantity(slowest)} pour des tuyaux courants (diamètre intérieur ${say.number(Number(from.value))} à ${say.quantity(to)}).`,
  'service/warm-the-bottle': ({ temperature }, say) =>
    `À ${say.quantity(temperature)}, l’huile est épaisse : garder le bidon à l’intérieur avant l’intervention, ou le mettre, fermé, dans de l’eau chaude. Ne jamais le chauffer à la flamme.`,
  'service/no-filler': ({ part }) => `L’outillage n’a pas d’entonnoir avec tuyau (${writePart(part)}).`,
  'service/no-oil-to-pour': ({ part }) =>
    `L’huile n’est pas connue ; aucun temps de versement n’est calculé (${writePart(part)}).`,
  'service/pour-volume-not-known': ({ part }) =>
    `La quantité n’est pas connue ; aucun temps de versement n’est calculé (${writePart(part)}).`,
  'service/drain-until-drips': () => 'Laisser couler jusqu’au goutte-à-goutte.',
  'service/settle-stated': ({ minutes }, say) =>
    `La fiche technique donne un temps de repos de ${say.quantity(minutes)}.`,
  'service/settle-not-stated': () => 'La fiche technique n’indique pas de temps de repos. Voir le manuel.',
  'service/cure-stated': ({ product, time }, say) =>
    `Laisser durcir ${quote(product)} ${say.quantity(time)} avant tout contact avec l’huile.`,
  'service/cure-not-stated': ({ product }) =>
    `La fiche technique n’indique pas de temps de durcissement de ${quote(product)}. Voir le manuel et l’étiquette.`,
  'service/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `Le dernier relevé ${writeOfMeter(meter)} date de ${say.count(days, 'jour', 'jours')} (${say.date(date)} ; limite ${say.count(staleAfter, 'jour', 'jours')}). Relever de nouveau le compteur avant de se fier à « ${cardWords.dueStates['not due']} ».`,
  'service/time-sum': ({ steps, minutes, waitMinutes }, say) =>
    `${say.count(steps, 'étape', 'étapes')} : ${say.count(minutes, 'minute', 'minutes')} de travail et ${say.count(waitMinutes, 'minute', 'minutes')} d’attente (estimation interne).`,
  'service/time-from-records': ({ count, min, max, estimate }, say) =>
    `Médiane de ${say.count(count, 'intervention', 'interventions')} avec le même travail, ${say.number(min)} à ${say.number(max)} min ; l’estimation interne est de ${say.number(estimate)} min.`,
  'service/time-few-visits': ({ count, required }, say) =>
    `${say.count(count, 'intervention notée', 'interventions notées')} avec le même travail ; à partir de ${say.number(required)} interventions, leur médiane remplace l’estimation.`,
  'service/labour': ({ rate, cost }, say) =>
    `Main-d’œuvre : ${say.number(cost.amount)} ${cost.currency} à ${say.number(rate.amount)} ${rate.currency} par heure.`,
  'service/waiting-time-not-known': ({ count }, say) =>
    count < 2
      ? `${say.number(count)} attente de durée non connue n’est pas comprise.`
      : `${say.number(count)} attentes de durée non connue ne sont pas comprises.`,
  'service/only-if-low': () => 'Seulement si le niveau est bas',
  'service/only-on-some-machines': ({ variants, modelYears, serials, market }) => {
    const prefix = serials?.prefix ?? ''
    const facts = [
      variants && joinQuoted(variants),
      modelYears && `années modèle ${writeRange(modelYears.from, modelYears.to)}`,
      serials && `numéros de série ${writeRange(serials.from, serials.to, prefix)}`,
      market && `marché ${joinQuoted(market)}`,
    ]
    return `Seulement pour : ${join(
      facts.filter((fact) => fact !== undefined),
      'et',
    )}`
  },
  'service/supply': ({ supply }) => `${capitalize(nameOf(SUPPLY_NAMES, supply))}.`,
  'service/sample-label': ({ machine, part, date, hours, oil, hoursOnOil }, say) =>
    `Étiquette du prélèvement : ${[
      machine,
      writePart(part),
      date,
      hours && say.quantity(hours),
      oil ?? 'huile non connue',
      hoursOnOil === undefined ? 'heures de l’huile non connues' : `${say.quantity(hoursOnOil)} sur l’huile`,
    ]
      .filter(Boolean)
      .join(', ')} ; flacon numéro ____.`,
  'service/hand-tools': ({ tools }, say) =>
    `Outils à main : ${say.list(tools.map((tool) => nameOf(TOOL_NAMES, tool)))}.`,
  'service/used-oil': ({ volume }, say) =>
    `Apporter un récipient fermé et marqué pour ${say.quantity(volume)} au plus d’huile usagée.`,
  'service/drain-limit-from-dry-fill': ({ part, volume }, say) =>
    `La fiche technique n’indique pas de quantité ; jusqu’au remplissage à sec de ${say.quantity(volume)} peut couler (${writePart(part)}).`,
  'service/used-oil-not-known': ({ part }) =>
    `La quantité d’huile usagée n’est pas connue (${writePart(part)}).`,
  'service/manual-first': () => 'Le manuel de la machine et les règles locales priment sur cette fiche.',
  'service/licensed-work': () => 'Confier le travail soumis à habilitation aux personnes qui la détiennent.',
  'service/record-not-counted': ({ date, reason }, say) =>
    `Le rapport du ${say.date(date)} ne compte pas. ${say.reason(reason)}`,
  'service/not-to-be-used': ({ signal, date, fault }, say) =>
    `${SIGNAL_WORDS[signal]} : Ne pas utiliser cette machine. Un défaut est en cours depuis le ${say.date(date)}. ${say.reason(fault)}`,
  'service/no-oil-added': ({ part, since }, say) =>
    `${capitalize(writePart(part))} : aucun appoint d’huile depuis le ${say.date(since)}.`,
  'service/oil-start-not-known': ({ part }) =>
    `Ni vidange ni jour de première utilisation notés (${writePart(part)}) : les noter pour voir à quelle vitesse l’huile se perd.`,
  'service/oil-added': ({ part, added, count, since, days, hours, per100Hours, percentOfFill }, say) => {
    const topUpsText = count === 1 ? '' : ` en ${say.number(count)} appoints`
    const durationText = hours
      ? `, ${writeAmount(hours, say)}`
      : days === undefined
        ? ''
        : `, ${say.count(days, 'jour', 'jours')}`
    const startText = since === undefined ? '' : ` depuis le ${say.date(since)}`
    const rateText = per100Hours ? `, ${writeAmount(per100Hours, say, 'environ ')} par 100 h` : ''
    const shareText = percentOfFill === undefined ? '' : `, ${say.number(percentOfFill, 0)} % du remplissage`
    return `${capitalize(writePart(part))} : ${say.quantity(added)} ajoutés${topUpsText}${startText}${durationText}${rateText}${shareText}.`
  },
  'service/top-up-instance-missing': ({ part }) =>
    `Les appoints ne nomment pas l’exemplaire (${writePart(part)}) : chercher des fuites à chacun.`,
  'service/oil-may-have-settled': () =>
    'Petite quantité peu après une vidange : l’huile s’est peut-être répartie. Contrôler de nouveau le niveau après 10 h.',
  'service/look-for-leaks': () =>
    'Un carter fermé ne consomme pas d’huile. Chercher des fuites, et contrôler de nouveau le niveau après 10 h.',
  'service/find-the-leak': () => 'Trouver la fuite avant de faire l’appoint.',
  'service/loses-oil': ({ signal, reasons }, say) =>
    `${SIGNAL_WORDS[signal]} : ${reasons.map((reason) => say.reason(reason)).join(' ')}`,
  'service/used-oil-rules': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Porter l’huile usagée à un point de collecte, dans un récipient sain, fermé et marqué comme huile usagée.`,
  'service/wrong-sheet': ({ required, revision, given, givenRevision }) =>
    `Fiche technique attendue : ${quote(String(required))}, révision ${revision} ; trouvé ${quote(given)}, révision ${givenRevision}.`,
  'service/service-not-on-sheet': ({ service, known }) =>
    `La fiche technique n’a pas d’entretien ${quote(service)} ; elle a ${joinQuoted(known, 'et')}.`,
  'service/procedure-errors': ({ count, signal }, say) =>
    `${SIGNAL_WORDS[signal]} : Les étapes de cette fiche viennent d’une procédure écrite avec ${say.count(count, 'erreur', 'erreurs')}, voir « ${cardWords.labels.findings} ». Ne pas les suivre avant correction.`,
  'service/procedure-of-other-services': ({ services, asked }) =>
    `La procédure est pour ${joinQuoted(services, 'et')}, pas pour ${joinQuoted(asked, 'et')}. Choisir ses entretiens, ou une autre procédure.`,
  'service/service-not-on-machine': ({ service }) =>
    `L’entretien ${quote(service)} ne concerne pas cette machine (selon variante, numéro de série, année modèle et marché). Choisir un autre entretien.`,
}
