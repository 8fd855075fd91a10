import type { RuleCodes } from '../../rules/index.js'
import type { Filter } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { join, nameOf, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { MEASURE_NAMES } from './quantity.js'
import { joinQuoted, quote, writeNewSeal, writeOfMeter, writeTheSeal } from './words.js'

interface Suggestion {
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}

/** The probable name, or the known names. Starts with a space; empty if no name is known. */
function writeSuggestion({ meant, known, more }: Suggestion, say: Say): string {
  if (meant !== undefined) return ` S’agit-il de ${quote(meant)} ?`
  if (known.length === 0) return ''
  const names = known.map(quote)
  const moreText = more > 0 ? [say.count(more, 'autre', 'autres')] : []
  return ` Il y a ${join([...names, ...moreText], 'et')}.`
}

type Volume = RuleCodes['record/refill-outside-tolerance']['refilled']

const REFERENCE_NAMES: Readonly<Record<RuleCodes['spec/dangling-reference']['to'], string>> = {
  source: 'de source',
  axle: 'd’essieu',
  support: 'de support',
  gearcase: 'de carter',
  opening: 'd’ouverture',
  cover: 'de couvercle',
  shield: 'de protection',
  service: 'd’entretien',
}

const WARRANTY_FACT_NAMES: Readonly<
  Record<RuleCodes['record/warranty-facts-missing']['lacks'][number], string>
> = {
  'who did it': 'qui a fait le travail',
  photos: 'des photos',
  'oil batch': 'le lot de l’huile',
  'part numbers': 'les références des pièces neuves',
  'wrench certificate': 'le certificat de chaque clé dynamométrique',
  signature: 'une signature',
}

function writeRefillFix({ value, unit }: Volume, byLevel: boolean, say: Say): string {
  if (byLevel)
    return 's’assurer que la machine est de niveau et que l’huile était bien vidangée, puis mettre le niveau à son repère.'
  const amount = say.quantity({ value: Math.abs(value), unit })
  return `${value > 0 ? `retirer ${amount}` : `ajouter ${amount}`}, puis contrôler le niveau.`
}

const UNMEASURED_TEXTS: Readonly<Record<RuleCodes['record/tightening-not-measured']['done'], string>> = {
  'by hand': 'serrage à la main seulement. Serrer selon la fiche technique avant que la machine ne bouge',
  'without a wrench': 'serré, mais le couple n’a pas été mesuré. Le régler avec une clé dynamométrique',
  'not checked': 'serrage non contrôlé. Le contrôler avant que la machine ne bouge',
  'not known': 'on ne sait pas si c’est serré. Contrôler avant que la machine ne bouge',
}

const SERIAL_MISTAKES: Readonly<Record<RuleCodes['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'le nombre répète le préfixe. L’y omettre',
  'not a number': 'les deux bouts ne doivent avoir que des chiffres. Mettre les lettres dans le préfixe',
  'different widths': 'les deux bouts doivent avoir autant de chiffres. Écrire les zéros de tête',
  'ends before it starts': 'la plage finit avant de commencer',
}

const LEAKS: Readonly<Record<RuleCodes['record/leak-left']['found'], string>> = {
  weeping: 'un suintement',
  dripping: 'un goutte-à-goutte',
}
const METAL: Readonly<Record<RuleCodes['record/metal-in-the-oil']['found'], string>> = {
  metallic: 'métal dans l’huile',
  chips: 'copeaux sur l’aimant ou dans un filtre',
  pieces: 'morceaux sur l’aimant ou dans un filtre',
}
const LEVELS: Readonly<Record<RuleCodes['record/level-not-right']['level'], string>> = {
  'not checked': 'niveau non contrôlé. Le contrôler avant le travail de la machine',
  below: 'niveau sous le repère. Le corriger avant le travail de la machine',
  above: 'niveau au-dessus du repère. Le corriger avant le travail de la machine',
}
const FILTER_CHANGES: Readonly<Record<Filter['change'], string>> = {
  'every change': 'remplacement',
  'clean every change': 'nettoyage',
  'not stated': 'entretien',
}

const writeSide = (side: string) =>
  Object.hasOwn(cardWords.caseFaces, side) ? nameOf(cardWords.caseFaces, side).replace(/^face /, '') : side

export const rulesTexts: Texts<RuleCodes> = {
  // Sheets, and references to them.
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'Condition vide : toute machine la remplit. La compléter, ou la retirer.'
      : 'Liste vide : aucune machine ne remplit la condition. Compléter la liste, ou la retirer.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `La fiche technique n’a pas ${REFERENCE_NAMES[to]} ${quote(id)}.${writeSuggestion(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Id en double ${quote(id)} dans cet ensemble (type de document : ${quote(kind)}). Donner à chaque document son propre id.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `La machine a ${say.count(count, 'exemplaire', 'exemplaires')} de ${quote(gearcase)}. La quantité vaut-elle pour un ou pour tous ? Ajouter « per ».`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `Le minimum ${say.quantity({ value: min, unit })} dépasse le maximum ${say.quantity({ value: max, unit })}. Vérifier dans le manuel.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `Les années modèle finissent en ${to}, avant de commencer en ${from} ; aucune machine ne remplit cette condition. Corriger les années.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `${quote(gearcase)} n’a pas d’orifice de remplissage et ne peut pas être rempli après la vidange. Donner à une ouverture l’usage « fill ».`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `Un entretien vidange ${quote(gearcase)}, mais la fiche technique n’a aucun moyen de le vider. Citer un bouchon de vidange, un couvercle ou une aspiration.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `${quote(gearcase)} partage l’huile de ${quote(owner)}, qui partage lui-même l’huile d’un autre carter. Citer le carter auquel appartient l’huile.`,
  'spec/opening-without-role': ({ opening, role, use }) =>
    `${quote(opening)} est cité ici pour ${quote(use)}, mais son entrée n’a pas l’usage ${quote(role)}. Corriger l’un des deux.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `Cette exception et ${other} fixent ${target} pour la même machine. Restreindre une des conditions ; l’ordre des exceptions ne décide pas.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `Cette exception est de type ${quote(kind)}, mais ${target} est de type ${quote(there)}.`,
  'spec/override-target-missing': ({ target }) =>
    `La fiche technique n’a pas de valeur à ${target} que l’exception puisse fixer. Vérifier le pointeur.`,
  'spec/part-supersedes-itself': ({ partNumber, numbers }) =>
    `La pièce ${partNumber} se remplace elle-même (${numbers.join(' → ')}) ; il n’y a pas de référence à acheter. En corriger une.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${hours} h ressemble à ${say.count(months, 'mois', 'mois')} écrits en heures. Un compteur horaire compte le travail, pas le calendrier : écrire la durée comme P${months}M.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Série ${prefix}${from} à ${prefix}${to} : ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `Aucune fiche technique ${quote(id)} dans cet ensemble.${writeSuggestion(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }) =>
    `La révision ${quote(revision)} de la fiche technique ${quote(id)} est citée ; l’ensemble a ${joinQuoted(known, 'et')}. Comparer les deux, puis citer la bonne révision.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `Une tolérance de − ${minus} + ${plus} sur ${say.quantity({ value, unit })} est aussi grande que la valeur. Vérifier la virgule.`,
  'spec/unit-of-other-measure': ({ unit, measure, required }, say) =>
    `Grandeur attendue : ${MEASURE_NAMES[required]} ; trouvé : ${MEASURE_NAMES[measure]} (${writeUnitName(unit, say)}).`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `La fiche technique n’a pas de variante ${quote(id)}.${writeSuggestion(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `Ces conditions permettent à une machine d’être à la fois ${quote(variant)} et ${quote(other)}. Les restreindre pour qu’une seule vaille.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `Cette dérogation ne correspond à aucun constat : il n’y a pas de ${code} à ${waived === '' ? 'ce document' : waived}. La retirer, ou corriger son pointeur.`,
  'spec/support-on-another-axle': ({ gearcase, axle, lifted }) =>
    `${quote(gearcase)} est sur ${quote(axle)}, mais ses supports lèvent ${joinQuoted(lifted, 'et')} : la machine serait levée du mauvais bout. Vérifier dans le manuel.`,
  'spec/drain-at-mark-up': ({ opening }) =>
    `${quote(opening)} vidange repère en haut : l’ouverture est alors en haut, et l’huile reste. Vérifier dans le manuel.`,
  'spec/wheel-mark-missing': ({ opening }) =>
    `${quote(opening)} sert à remplir, à vidanger et au niveau, mais la fiche technique ne donne pas la position de la roue pour chaque usage. Ajouter « wheelMark » à ses usages.`,
  'spec/implausible-drain-temperature': ({ gearcase, temperature }, say) =>
    `${gearcase} : vidanger à ${say.quantity(temperature)} brûlerait la personne qui ouvre le bouchon. ${temperature.unit === 'degC' ? 'La valeur était-elle imprimée en °F ? ' : ''}Vérifier dans le manuel.`,
  'spec/drain-not-named': ({ opening, gearcase }) =>
    `${gearcase} : ${quote(opening)} est une vidange, mais aucun moyen de vider ne la cite : elle resterait fermée et de l’ancienne huile resterait. La citer, ou retirer l’usage « drain ».`,
  'spec/gearcase-without-change': ({ gearcase }) =>
    `Aucun entretien ne vidange ${quote(gearcase)}. L’ajouter à un entretien, ou déroger ici si le manuel le remplit à vie.`,
  'spec/filter-without-change': ({ gearcase }) =>
    `Aucune vidange ne comprend les filtres de ${quote(gearcase)}, car ce carter n’est jamais vidé. Les déplacer vers le carter auquel appartient l’huile, ou indiquer comment il se vide.`,
  'spec/position-contradicts-place': ({ part, place, position }) =>
    `${part} : les mots de l’emplacement disent ${writeSide(place)}, la position dit ${writeSide(position)}. Vérifier dans le manuel, et corriger l’un des deux.`,
  'spec/position-off-face': ({ part, face, coordinate }) =>
    coordinate === 'offset'
      ? `${part} : un décalage est une distance d’un côté. Ajouter « across », par exemple « left ».`
      : `${part} : la ${cardWords.caseFaces[face]} n’a pas ce ${quote(coordinate)}. Le retirer, ou corriger la face.`,
  'spec/level-on-raised-end': ({ gearcase, raised }) =>
    raised === 'nothing'
      ? `${gearcase} : le niveau se lit sur chandelles, mais la machine reste au sol. Corriger l’un des deux.`
      : `${gearcase} : le niveau se lit sur chandelles, mais elles ne lèvent qu’un bout, et une machine inclinée montre un niveau faux. Vérifier dans le manuel.`,
  'spec/implausible-mass': ({ mass }, say) =>
    `Une machine de ${say.quantity(mass)} est invraisemblable, et la charge nominale des chandelles y est comparée. Tonnes et kilogrammes ont-ils été confondus ?`,
  'spec/source-date-in-the-future': ({ date, today }, say) =>
    `Cette source est datée du ${say.date(date)}, après aujourd’hui, ${say.date(today)}. Vérifier l’année.`,
  'spec/override-far-from-base': ({ figure, base }, say) =>
    `${say.quantity(figure)} sur certaines machines et ${say.quantity(base)} sur les autres diffèrent beaucoup. Vérifier la virgule et l’unité.`,
  'spec/size-spelling': ({ size, meant }) =>
    `Les tailles se comparent comme du texte : écrire ${quote(meant)}, pas ${quote(size)}.`,
  'spec/override-equals-base': ({ target }) =>
    `Cette exception fixe la valeur que la fiche technique a déjà à ${target}. La retirer, ou vérifier la valeur.`,
  'spec/model-year-gap': ({ from, to }) =>
    `Aucune variante ne couvre ces années modèle : ${from === to ? from : `${from} à ${to}`}. Vérifier si une machine a été construite alors.`,
  // Printed figures: second units, threads and torques.
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} diffèrent de plus d’un dixième. La plus courte décide.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({
      code: `quantity/printed-figures-${params.how === 'miss' ? 'differ-slightly' : params.how}`,
      params,
    }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'quantity/distance-converted-wrong-way': ({ first, second }, say) =>
    `${say.quantity(first)} et ${say.quantity(second)} : une distance en milles est le plus petit nombre ; la conversion a été faite à l’envers. Vérifier dans le manuel ; la plus courte décide.`,
  'thread/designation-unreadable': ({ thread, part, because }, say) =>
    `${part} : le filetage ${quote(thread)} est illisible.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part} : ${say.quantity(torque)} chargerait une vis (${thread}, classe ${propertyClass}) à environ ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })} ; sa charge d’épreuve est de ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Vérifier l’unité et la classe.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase} : ${say.quantity(fill)} au bouchon de remplissage et ${say.quantity(drain)} au bouchon de vidange conviendraient mieux aux filetages l’un de l’autre. Vérifier s’ils ont été échangés ; déroger ici si le manuel les imprime ainsi.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part} : ${say.quantity(torque)} est inhabituel pour un bouchon ${thread} ; ${factor.replace('.', ',')}, cela fait ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` La valeur est peut-être en ${writeUnitName(meant, say)}.`} Vérifier dans le manuel avant usage.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part} : ${say.quantity(step)} suit ${say.quantity(before)}. Chaque palier doit dépasser le précédent.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part} : ${thread} est un filetage cylindrique. Les tours après serrage à la main sont pour les filetages coniques et l’arracheraient.`,
  'torque/turns-reversed': ({ part, min, max }) =>
    `${part} : le minimum de ${min} tours dépasse le maximum de ${max}. Corriger la fiche technique.`,
  'torque/large-for-drive': ({ part, drive, torque, limit }, say) =>
    `${part} : ${say.quantity(torque)} est bien trop pour un six pans de ${drive} ; on attendrait au plus environ ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Vérifier l’unité.`,
  'torque/fill-and-drain-far-apart': ({ gearcase, high, low }, say) =>
    `${gearcase} : ${say.quantity(high)} à un bouchon et ${say.quantity(low)} à l’autre diffèrent beaucoup. Vérifier les unités.`,
  'torque/small-for-class': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part} : ${say.quantity(torque)} ne charge une vis (${thread}, classe ${propertyClass}) qu’à environ ${say.number(Math.round((100 * load.value) / proof.value))} % de sa charge d’épreuve. Vérifier l’unité et la virgule.`,
  'torque/implausible-turns': ({ part, turns }) =>
    `${part} : ${turns} tours après serrage à la main fendraient le carter. Vérifier la virgule.`,
  'torque/implausible-angle': ({ part, angle }, say) =>
    `${part} : ${say.quantity(angle)} est plus d’un tour entier et casserait la vis. Vérifier la valeur.`,
  'torque/unknown-class': ({ part, propertyClass, meant }) =>
    `${part} : aucune vis n’a la classe ${quote(propertyClass)}.${meant === undefined ? ' Vérifier dans le manuel.' : ` S’agit-il de ${quote(meant)} ?`}`,
  // Seals, oils and quantities.
  'seal/crush-washer-reused': ({ part }) =>
    `${part} : la fiche technique ne remplace la rondelle à écraser que « on condition ». L’écrasement la durcit : en monter une neuve à chaque ouverture, ou déroger ici avec la page du manuel.`,
  'seal/material-doubtful-in-oil': ({ part, reason }, say) => `${part} : ${say.reason(reason)}`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part} : l’huile de transmission détruit ${nameOf(cardWords.sealMaterials, material)}. Vérifier dans le catalogue de pièces.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part} : le numéro et la taille désignent deux joints différents. ${say.reason(reason)}`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part} : ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part} : aucun joint n’est listé. Lister la rondelle ou le produit d’étanchéité, « none » si le bouchon n’a pas de joint, ou « not stated » si le manuel ne le dit pas.`,
  'seal/none-beside-seal': ({ part }) =>
    `${part} : un joint et « none » sont tous deux listés. En retirer un.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part} : ${thread} est un filetage cylindrique et n’étanche pas seul. Lister la rondelle ; déroger ici pour un bouchon à cône métallique.`,
  'seal/sealant-on-dry-thread': ({ part }) =>
    `${part} : une pâte d’étanchéité est listée, mais le serrage est pour un filetage sec. Vérifier dans le manuel.`,
  'seal/o-ring-far-from-plug': ({ part, inside, thread }, say) =>
    `${part} : un joint torique de ${say.quantity(inside)} intérieur ne va pas sur un bouchon ${thread}. Vérifier dans le catalogue de pièces.`,
  'seal/cure-of-zero': ({ part }) =>
    `${part} : un durcissement nul signifie que l’huile peut toucher aussitôt le produit. Écrire « not stated » si le manuel ne donne pas de temps.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `La quantité ${say.quantity(refill)} plus ${say.quantity(volume)} de ${quote(additive)} dépasse le remplissage à sec de ${say.quantity(dryFill)}. La quantité semble comprendre l’additif.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} de ${quote(additive)} égale ou dépasse la quantité de ${say.quantity(refill)}. Vérifier l’unité.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Entre ${say.quantity(from)} et ${say.quantity(to)}, aucune huile de cette liste n’est autorisée. Vérifier les plages.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, édition ${quote(edition)} : les limites de ${grade} ne sont pas connues. Éditions connues : ${say.list(known)}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} n’a pas de grade ${quote(grade)}.${others.length === 0 ? '' : ` Systèmes qui l’ont : ${say.list(others)}.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil} : ${say.quantity(viscosity)} est hors du grade ${grade}. Vérifier la fiche du produit.`,
  'oil/unknown-category': ({ category }) =>
    `Il n’y a pas de catégorie de service ${quote(category)} : les huiles de transmission vont de GL-1 à GL-6. Vérifier dans le manuel.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase} : sa part de l’huile commune, ${say.quantity(portion)}, dépasse la quantité totale de ${say.quantity(refill)}. Vérifier l’unité.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase} : la quantité ${say.quantity(refill)} dépasse le remplissage à sec ${say.quantity(dryFill)}, alors qu’il reste toujours un peu d’huile. Vérifier si les deux ont été échangés.`,
  'fill/implausible-refill': ({ gearcase, refill, limit }, say) =>
    `${gearcase} : une quantité de ${say.quantity(refill)} est invraisemblable ici ; on attendrait au plus environ ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Vérifier l’unité.`,
  'fill/dry-fill-far-above-refill': ({ gearcase, dryFill, refill }, say) =>
    `${gearcase} : le remplissage à sec ${say.quantity(dryFill)} est plus de cinq fois la quantité de ${say.quantity(refill)}. Vérifier la virgule et l’unité.`,
  'fill/minutes-with-engine-running': ({ gearcase }) =>
    `${gearcase} : le niveau ne peut pas se lire moteur en marche et quelques minutes après l’arrêt. Corriger l’un des deux.`,
  'fill/implausible-level-depth': ({ gearcase, below }, say) =>
    `${gearcase} : un niveau ${say.quantity(below)} sous l’orifice est invraisemblable. Vérifier la virgule et l’unité.`,
  'spec/implausible-hours': ({ hours }, say) =>
    `${say.quantity({ value: hours, unit: 'h' })} entre deux entretiens est invraisemblable. Vérifier la virgule.`,
  // Logs, toolboxes and stocks.
  'log/date-in-the-future': ({ date, today }, say) =>
    `${say.date(date)} est après aujourd’hui, ${say.date(today)}. Vérifier l’année et le mois.`,
  'log/oil-not-permitted': ({ gearcase, oil, permitted }) =>
    `${gearcase} : appoint avec ${quote(oil)}, une huile non autorisée (autorisé : ${joinQuoted(permitted, 'et')}). Vidanger avant que la machine ne retravaille.`,
  'log/pause-reversed': ({ from, to }, say) =>
    `La pause finit le ${say.date(to)}, avant de commencer le ${say.date(from)}.`,
  'log/record-of-other-machine': ({ machine, log, record }) =>
    `Le rapport ${quote(record)} appartient à la machine ${quote(machine)}, mais ceci est le carnet de ${quote(log)}.`,
  'log/unknown-part': ({ id, ...names }, say) =>
    `La fiche technique n’a pas de ${quote(id)} ici.${writeSuggestion(names, say)}`,
  'log/used-before-commissioned': ({ date, commissioned }, say) =>
    `Le ${say.date(date)} est avant la première utilisation, le ${say.date(commissioned)}. Corriger l’une des deux dates.`,
  'log/variant-contradicted': ({ variant, candidates }) => {
    const others =
      candidates.length === 0
        ? 'ces données ne conviennent à aucune variante de la fiche technique'
        : `ces données conviennent à ${joinQuoted(candidates, 'et')}`
    return variant === undefined
      ? 'Numéro de série, année modèle et marché ne conviennent à aucune variante de la fiche technique. Vérifier la plaque.'
      : `Numéro de série, année modèle et marché excluent la variante indiquée ${quote(variant)} : ${others}. Vérifier la plaque.`
  },
  'log/meter-through-pause': ({ meter, first, last }, say) =>
    `Le relevé ${writeOfMeter(meter)} est passé de ${say.number(first)} à ${say.number(last)} pendant cette pause. Vérifier les dates de la pause.`,
  'toolbox/implausible-accuracy': ({ wrench, percent }, say) =>
    `${wrench} : ${say.number(percent)} % est invraisemblable pour une clé dynamométrique. Vérifier son certificat.`,
  'toolbox/calibration-in-the-future': ({ wrench, date, today }, say) =>
    `${wrench} : étalonnage daté du ${say.date(date)}, après aujourd’hui, ${say.date(today)}. Vérifier le certificat.`,
  'toolbox/declared-range-reversed': ({ wrench, min, max }, say) =>
    `${wrench} : la plage déclarée finit à ${say.quantity(max)}, pas plus haut que son début à ${say.quantity(min)}.`,
  'toolbox/scale-wrong': ({ wrench, lowest, highest, graduation, unit }, say) =>
    `${wrench} : une échelle de ${say.number(lowest)} à ${say.quantity({ value: highest, unit })} par pas de ${say.number(graduation)} est impossible.`,
  'toolbox/scales-disagree': ({ wrench, first, other }, say) =>
    `${wrench} : une échelle finit à ${say.quantity(first)} et l’autre à ${say.quantity(other)}. Les échelles d’une clé finissent au même couple ; vérifier les unités.`,
  'toolbox/vessel-graduation': ({ vessel, size, mark }, say) =>
    `${vessel} : la graduation ou le repère le plus bas, ${say.quantity(mark)}, dépasse la contenance de ${say.quantity(size)}.`,
  'toolbox/implausible-load-rating': ({ tool, rating }, say) =>
    `${tool} : une charge nominale de ${say.quantity(rating)} est invraisemblable. Relire la plaque : tonnes et kilogrammes ont-ils été confondus ?`,
  'stock/opened-larger-than-size': ({ container, opened, size }, say) =>
    `${container} : il reste ${say.quantity(opened)} dans un récipient de ${say.quantity(size)}. Lister à part les récipients pleins, ou vérifier l’unité.`,
  'stock/viscosities-swapped': ({ container, kv40, kv100 }, say) =>
    `${container} : ${say.quantity(kv100)} à 100 °C n’est pas inférieur à ${say.quantity(kv40)} à 40 °C. L’huile se fluidifie en chauffant ; vérifier si les deux ont été échangés.`,
  'stock/implausible-density': ({ container, density }, say) =>
    `${container} : aucune huile n’a une masse volumique de ${say.quantity(density)}. Vérifier l’unité.`,
  'stock/implausible-pour-point': ({ container, pourPoint }, say) =>
    `${container} : un point d’écoulement de ${say.quantity(pourPoint)} est invraisemblable pour une huile de transmission. Le signe moins a-t-il été perdu ?`,
  // Service records.
  'record/corrects-itself': ({ id }) =>
    `La correction de ${quote(id)} ramène à ce rapport. Citer le rapport de l’entretien lui-même.`,
  'record/corrects-unknown-record': ({ id, ...names }, say) =>
    `Le carnet de cette machine n’a pas de rapport ${quote(id)} à corriger.${writeSuggestion(names, say)}`,
  'record/date-in-the-future': ({ date, today }, say) =>
    `Le rapport est daté du ${say.date(date)}, après aujourd’hui, ${say.date(today)}. Vérifier l’année et le mois.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase} : refermé avec ${LEAKS[found]}. Un bouchon à rondelle demande une rondelle neuve, jamais plus de couple ; un bouchon conique peut être serré dans ses tours.`,
  'record/level-not-right': ({ gearcase, level }) => `${gearcase} : ${LEVELS[level]}.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `Aucun carnet de la machine ${quote(id)} dans cet ensemble.${writeSuggestion(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase} : ${METAL[found]}, et pourtant rempli. Arrêter la machine et faire ouvrir le carter.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }) =>
    `${gearcase} : rempli avec ${quote(oil)}, une huile non autorisée (autorisé : ${joinQuoted(permitted, 'et')}). La vidanger avant le travail de la machine.`,
  'record/part-not-on-machine': ({ part }) =>
    `Cette machine n’a pas de ${quote(part)}, selon variante, série, année modèle ou marché. Vérifier si le rapport concerne une autre machine.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part} : ouvert, mais le serrage n’est pas noté. Contrôler le bouchon avant que la machine ne bouge.`,
  'record/reading-contradicts-log': ({ reason }, say) =>
    `Ce relevé contredit le carnet de la machine. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `Le relevé ${writeOfMeter(meter)} manque ; le prochain entretien ne peut pas être compté depuis ce rapport.`,
  'record/refill-not-recorded': ({ gearcase }) =>
    `${gearcase} : vidange sans quantité remplie. Contrôler le niveau, puis noter la quantité.`,
  'record/refill-outside-tolerance': ({ gearcase, refilled, printedRefill, byLevel, reason }, say) =>
    `${gearcase} : ${say.quantity(refilled)} remplis, mais la fiche technique indique ${say.quantity(printedRefill)} : ${writeRefillFix(reason.params['difference'] as Volume, byLevel, say)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part} : ${writeTheSeal(seal)} : réutilisation notée. À chaque ouverture, il faut du neuf ; monter ${writeNewSeal(seal)}.`
      : `${part} : ouvert, mais rien de neuf n’est noté : ${writeTheSeal(seal)}. Contrôler le bouchon ; en cas de doute, monter ${writeNewSeal(seal)}.`,
  'record/tightening-method-differs': ({ part, done, required }) =>
    `${part} : serré ${done === 'turns' ? 'en tours' : 'au couple'} ; la fiche technique indique ${required === 'turns' ? 'des tours' : 'un couple'}.`,
  'record/tightening-not-measured': ({ part, done }) => `${part} : ${UNMEASURED_TEXTS[done]}.`,
  'record/torque-outside-band': ({ part, set, stated, side }, say) =>
    `${part} : réglé à ${say.quantity(set)} ; la fiche technique indique ${say.quantity(stated)}. ${
      side === 'above'
        ? 'Déposer, contrôler le filetage, monter une rondelle neuve s’il y en a une, et resserrer.'
        : 'Serrer au couple indiqué.'
    }`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part} : ${say.count(turns, 'tour', 'tours')} après serrage à la main ; la fiche technique indique ${max === undefined ? `au moins ${min}` : `${min} à ${max}`}.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `Aucun récipient ${quote(id)} dans cet ensemble.${writeSuggestion(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) =>
    `La fiche technique n’a pas de ${quote(id)} ici.${writeSuggestion(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `Aucune clé dynamométrique ${quote(id)} dans cet ensemble.${writeSuggestion(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase} : huile laiteuse. Chercher l’entrée d’eau, puis vidanger de nouveau après un court essai.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part} : ${quote(wrench)} ne peut pas être réglé à ${say.quantity(torque)}.`,
      ...because.map((reason) => say.reason(reason)),
      'Resserrer avec une clé adaptée.',
    ].join(' '),
  'record/drain-not-opened': ({ gearcase }) =>
    `${gearcase} : vidange sans ouverture notée. L’ancienne huile est peut-être encore dedans ; contrôler avant le travail de la machine.`,
  'record/drained-far-below-refill': ({ gearcase, drained, refilled }, say) =>
    `${gearcase} : ${say.quantity(drained)} vidangés, ${say.quantity(refilled)} remplis. Ou de l’huile s’est perdue (trouver la fuite), ou de l’ancienne huile est restée (contrôler le niveau).`,
  'record/wrench-out-of-calibration': ({ wrench, calibrated, date }, say) =>
    `${wrench} : dernier étalonnage le ${say.date(calibrated)}, expiré le ${say.date(date)}. Faire contrôler la clé ; si elle n’est pas bonne, régler de nouveau ces couples.`,
  'record/warranty-facts-missing': ({ lacks }, say) =>
    `La garantie exige des données absentes de ce rapport : ${say.list(lacks.map((fact) => WARRANTY_FACT_NAMES[fact]))}. Les ajouter par une correction tant qu’elles se trouvent encore.`,
  'record/certificate-expired': ({ wrench, certificate, validTo, date }, say) =>
    `${wrench} : le certificat ${certificate} était valable jusqu’au ${say.date(validTo)}, avant le travail du ${say.date(date)}. Citer le certificat de ce jour, ou faire contrôler la clé.`,
  'record/filter-not-changed': ({ part, change }) =>
    `${part} : avec l’huile, rien de noté : ${nameOf(FILTER_CHANGES, change)}. Faire le travail, ou le noter.`,
  'record/shield-not-refitted': ({ shield, gearcase }) =>
    `${gearcase} : le remontage de ${quote(shield)} n’est pas noté. Contrôler la machine avant de la faire tourner.`,
  'record/other-part-number': ({ part, fitted, stated }) =>
    `${part} : joint ${fitted} monté ; la fiche technique indique ${stated}. Vérifier s’il convient, ou si le constructeur a changé la référence.`,
  'record/more-than-container-held': ({ container, used, held }, say) =>
    `${container} : ${say.quantity(used)} notés comme pris dedans, mais le stock n’avait que ${say.quantity(held)}. Vérifier le récipient et l’unité.`,
}
