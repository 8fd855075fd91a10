import type { Param } from '../../base/index.js'
import type { DueLine, IntervalCodes, MeterQuantity } from '../../interval/index.js'
import type { SpecCodes } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, join, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { EVENT_NAMES, quote, writeFactNames, writeMeter, writeOfMeter } from './words.js'

export const intervalTexts: Texts<Omit<IntervalCodes, keyof SpecCodes>> = {
  'interval/by-meter': ({ verdict, printed, since, from, duePoint, now, left }, say) => {
    const start = `${writeStart(since)}${from?.date === undefined ? '' : ` le ${say.date(from.date)}`} à ${say.quantity(copyMeter(from))}`
    return `${writeVerdict(verdict)} : ${say.quantity(printed)} depuis ${start}, échéance à ${say.quantity(copyMeter(duePoint))} ; ${say.quantity(copyMeter(now))} le ${say.date(now?.date ?? '')}, ${writeRemaining(left, say)}.`
  },
  'interval/by-date': ({ verdict, limit, since, from, duePoint, left }, say) => {
    const period = limit !== undefined && 'period' in limit ? writePeriod(limit.period, say) : ''
    return `${writeVerdict(verdict)} : ${period} depuis ${writeStart(since)} le ${say.date(from?.date ?? '')}, échéance le ${say.date(duePoint?.date ?? '')} ; ${writeRemaining(left, say)}.`
  },
  'interval/by-event': ({ event, date }, say) =>
    `à faire : ${nameOf(EVENT_NAMES, event)} le ${say.date(date)}. Entretien avant réutilisation.`,
  'interval/window-left': ({ until }, say) =>
    `La marge d’entretien finit ${writePoint(until, say)} ; ensuite, l’entretien est en retard.`,
  'interval/not-tracked': ({ meter }) =>
    `Non suivi : cette machine n’a pas de compteur pour cette limite (${writeLimit(meter)}).`,
  'interval/governing-limit': ({ by, decidedBy, dueOn }, say) =>
    `Limite déterminante : ${writeLimit(by)}${dueOn === undefined ? '' : `, vers le ${say.date(dueOn)}`} (${decidedBy === 'days' ? 'sa date vient en premier' : 'la plus grande part est écoulée ; usage par jour non connu'}).`,

  'interval/severe-interval-applied': ({ criteria }) =>
    `Intervalle pour usage sévère appliqué (${criteria}).`,
  'interval/severe-factor-applied': ({ factor, criteria }) =>
    `Intervalle multiplié par ${factor.replace('.', ',')} pour usage sévère (${criteria}).`,
  'interval/severe-not-given': () =>
    'Le manuel ne donne pas d’intervalle pour usage sévère ; l’intervalle normal est appliqué.',
  'interval/early-service-counts': ({ by, date, point: at }, say) =>
    `Effectué en avance le ${say.date(date)} ; compte comme l’entretien prévu ${writePoint(at, say)} (${writeLimit(by)}).`,
  'interval/early-service-does-not-count': ({ by, date, point: at }, say) =>
    `Effectué trop tôt le ${say.date(date)} pour compter comme l’entretien prévu ${writePoint(at, say)} (${writeLimit(by)}), qui reste à faire.`,
  'interval/count-restarted': ({ by, date, point: at }, say) =>
    `Effectué le ${say.date(date)}, hors de la marge de l’entretien prévu ${writePoint(at, say)} (${writeLimit(by)}) ; le compte repart de ce jour.`,
  'interval/done-by-other-service': ({ date, service }, say) =>
    `${quote(service)} le ${say.date(date)} compte comme cet entretien.`,
  'interval/record-for-all-instances': ({ date, instance }, say) =>
    `Le rapport du ${say.date(date)} ne nomme pas d’exemplaire ; il est supposé couvrir aussi ${quote(instance)}.`,
  'interval/display-changed': ({ meter, less: { value, unit } }, say) => {
    const amount = say.quantity({ value: Math.abs(Number(value)), unit })
    return `Depuis le début du compte, ${writeMeter(meter)} a été remplacé, remis à zéro ou est repassé par zéro : il affiche ${amount} de ${Number(value) < 0 ? 'plus' : 'moins'} que sans cela.`
  },
  'interval/date-in-the-future': ({ what, date }, say) =>
    `${writeDated(what)} : la date ${say.date(date)} est après aujourd’hui ; ce n’est pas compté.`,

  'interval/reading-missing': ({ meter }) =>
    `Pas de relevé ${writeOfMeter(meter)}. Relever le compteur et noter la valeur.`,
  'interval/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `Le dernier relevé ${writeOfMeter(meter)}, le ${say.date(date)}, date de ${say.count(days, 'jour', 'jours')} d’usage (limite ${say.number(staleAfter)}). Relever de nouveau le compteur.`,
  'interval/reading-at-start-missing': ({ meter, of, date }, say) =>
    `Pas de relevé ${writeOfMeter(meter)} au début du compte (${writeStart(of)}), le ${say.date(date)}. Noter le relevé de ce jour.`,
  'interval/meter-broken': ({ meter, from, to }, say) =>
    `Les relevés ${writeOfMeter(meter)} du ${say.date(from)} au ${say.date(to)} sont incohérents. En corriger un, ou noter le remplacement, la remise à zéro ou le passage par zéro.`,
  'interval/first-use-missing': () => 'La date de première utilisation manque dans le carnet. La noter.',
  'interval/interval-not-stated': ({ which }) =>
    `Le manuel n’indique pas cette valeur : ${nameOf(INTERVAL_NAMES, which)}. Voir le manuel.`,
  'interval/interval-depends': ({ which, facts }, say) =>
    `${capitalize(nameOf(INTERVAL_NAMES, which))} : dépend de ces données : ${say.list(writeFactNames(facts))}. Les noter dans le carnet.`,
  'interval/fractional-period': ({ period, factor }, say) =>
    `${writePeriod(period, say)} × ${factor.replace('.', ',')} n’est pas un nombre entier de mois ou de jours ; limite non connue.`,
  'interval/due-date-out-of-calendar': ({ period, from }, say) =>
    `${writePeriod(period, say)} après le ${say.date(from)} dépasse l’année 9999. Corriger la fiche technique.`,
  'interval/no-limit-tracked': () => 'Cette machine n’a de compteur pour aucune limite de cet intervalle.',

  'interval/meter-falls': ({ before, after, from, to }, say) =>
    `Le compteur baisse de ${say.quantity(before)} le ${say.date(from)} à ${say.quantity(after)} le ${say.date(to)}, sans remplacement, remise à zéro ni passage par zéro.`,
  'interval/meter-jumps': ({ before, after, from, to, largest }, say) =>
    `Le compteur passe de ${say.quantity(before)} le ${say.date(from)} à ${say.quantity(after)} le ${say.date(to)} ; ${say.quantity(largest)} au plus est possible.`,
  'interval/readings-out-of-order': ({ date, after }, say) =>
    `Le relevé du ${say.date(date)} suit celui du ${say.date(after)} ; trié par date.`,
  'interval/reading-repeated': ({ date }, say) => `Relevé en double le ${say.date(date)} ; compté une fois.`,
  'interval/reading-out-of-bounds': ({ value, largest }, say) =>
    `${typeof value === 'number' ? say.number(value) : quote(value)} n’est pas un relevé de compteur possible (0 à ${say.quantity(largest)}) ; non compté.`,
  'interval/rollover-limit-missing': ({ date }, say) =>
    `Le compteur est repassé par zéro le ${say.date(date)}, mais le carnet n’indique pas à quelle valeur. La noter.`,
  'interval/rollover-assumed': ({ before, after, limit }, say) =>
    `De ${say.quantity(before)} à ${say.quantity(after)} : passage par zéro supposé à ${say.quantity(limit)}. Noter le passage pour le confirmer.`,

  'interval/forecast-needs-readings': ({ meter, readings }, say) =>
    `Usage par jour non connu : ${say.count(readings, 'relevé', 'relevés')} ${writeOfMeter(meter)}. Noter des relevés d’au moins deux jours.`,
  'interval/forecast-without-band': ({ readings }, say) =>
    `Seulement ${say.count(readings, 'relevé', 'relevés')} : trop peu pour une date au plus tôt et une date au plus tard. Il en faut quatre.`,
  'interval/forecast-without-end': () => 'L’usage est trop irrégulier pour une date au plus tard.',
  'interval/forecast-contradicted': ({ date }, say) =>
    `La tendance prévoit une date plus proche, mais le relevé du ${say.date(date)} la contredit.`,
  'interval/forecast-beyond-calendar': ({ meter }) =>
    `À ce rythme d’usage, ${writeMeter(meter)} n’atteint pas la limite avant l’année 9999.`,

  'interval/import-no-machines': () =>
    'Aucun matériel trouvé. Attendu : le JSON d’un parc, une liste de matériels ou une machine.',
  'interval/import-ambiguous-key': ({ one, other }) =>
    `Les clés ${quote(one)} et ${quote(other)} ont le même sens mais des valeurs différentes ; aucune n’est utilisée.`,
  'interval/import-unit-unknown': ({ unit }) =>
    `Unité de distance inconnue ${quote(unit)}. OdometerUnits doit être kilometre ou mile ; le relevé est omis.`,
  'interval/import-mixed-units': ({ units }, say) =>
    `Relevés de distance en ${say.list(units)}. Une machine doit utiliser une seule unité ; ses distances sont omises.`,
  'interval/import-date-unreadable': ({ text }) =>
    `${quote(text)} ne commence pas par une date ; le relevé est omis.`,

  'interval/first-longer-than-repeat': ({ by }, say) =>
    `Le premier intervalle est plus long que les suivants (${say.list(by.map(writeLimit))}). La plupart des manuels placent tôt la première vidange : vérifier dans le manuel.`,
  'interval/severe-longer-than-repeat': ({ by }) =>
    by === 'factor'
      ? 'Le facteur pour usage sévère dépasse 1 et allongerait l’intervalle. L’usage sévère le raccourcit : vérifier dans le manuel.'
      : `L’intervalle pour usage sévère est plus long que le normal (${writeLimit(by)}). L’usage sévère le raccourcit : vérifier dans le manuel.`,
  'interval/window-not-below-repeat': ({ by }) =>
    `La marge (${writeLimit(by)}) n’est pas plus courte que l’intervalle ; l’entretien ne serait jamais en retard. Vérifier dans le manuel.`,
  'interval/implied-speed': ({ speed, slowest, fastest }, say) =>
    `Heures et distance donnent ensemble une moyenne de ${say.quantity({ value: Math.round(speed * 10) / 10, unit: 'km/h' })} ; ${say.number(slowest)} à ${say.number(fastest)} est plausible. Chercher un zéro de trop, ou des milles pour des kilomètres.`,
  'interval/log-speed': ({ speed, fastest, from, to }, say) =>
    `Du ${say.date(from)} au ${say.date(to)}, heures et distance donnent ensemble une moyenne de ${say.quantity({ value: Math.round(speed), unit: 'km/h' })} ; ${say.number(fastest)} au plus est plausible. Relever de nouveau les deux compteurs.`,
  'interval/months-as-days': ({ days, months }, say) =>
    `${say.count(days, 'jour', 'jours')} ressemble à ${say.count(months, 'mois', 'mois')} convertis en jours. Écrire des mois : les jours ignorent les fins de mois et les années bissextiles.`,
}

const START_NAMES: Readonly<Record<NonNullable<DueLine['since']> | 'schedule', string>> = {
  'last service': 'le dernier entretien',
  'first use': 'la première utilisation',
  rebuild: 'la remise à neuf',
  schedule: 'un entretien programmé',
}
const INTERVAL_NAMES: Readonly<Record<string, string>> = {
  first: 'premier intervalle',
  repeat: 'intervalle',
  severe: 'intervalle pour usage sévère',
  window: 'marge d’entretien',
}

const writeVerdict = (verdict: DueLine['verdict']): string => nameOf(cardWords.dueStates, verdict)
const writeStart = (since: string | undefined): string => nameOf(START_NAMES, since ?? '')
const writeLimit = (by: string): string => nameOf(cardWords.dueBy, by)

/** A meter, an event or the id of a record. */
function writeDated(what: string): string {
  if (what === 'hours' || what === 'distance') return capitalize(writeMeter(what))
  return Object.hasOwn(EVENT_NAMES, what) ? capitalize(nameOf(EVENT_NAMES, what)) : quote(what)
}

/** A due point: a date as text, or a meter value. */
function writePoint(at: Param, say: Say): string {
  return typeof at === 'string' ? `le ${say.date(at)}` : `à ${say.quantity(at)}`
}

/** The meter value as a plain param: the interface has no index signature. */
function copyMeter(point: { readonly meter?: MeterQuantity } | undefined): Param | undefined {
  return point?.meter && { ...point.meter }
}

function writeRemaining(left: DueLine['left'], say: Say): string {
  const { value, unit } = left ?? { value: 0, unit: 'd' }
  const size = Math.abs(value)
  const amount = unit === 'd' ? say.count(size, 'jour', 'jours') : say.quantity({ value: size, unit })
  return value < 0 ? `${amount} de retard` : `reste ${amount}`
}

/** `P1Y6M` as `1 an et 6 mois`. */
function writePeriod(period: string, say: Say): string {
  const parts: string[] = []
  for (const [, digits = '0', unit = 'D'] of period.matchAll(/([0-9]+)([YMWD])/g)) {
    const [singular, plural] = PERIOD_UNIT_NAMES[unit] ?? ['jour', 'jours']
    parts.push(say.count(Number(digits), singular, plural))
  }
  return join(parts, 'et')
}

const PERIOD_UNIT_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  Y: ['an', 'ans'],
  M: ['mois', 'mois'],
  W: ['semaine', 'semaines'],
  D: ['jour', 'jours'],
}
