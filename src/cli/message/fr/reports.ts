import type { ReportTexts } from '../reportTexts.js'
import { count } from './count.js'

const METERS = { hours: 'heures', distance: 'distance' } as const
const MARKS = { point: 'point décimal', comma: 'virgule décimale' } as const

const countFindings = (value: number): string => count(value, 'constat', 'constats')
const countReadings = (value: number): string => count(value, 'relevé', 'relevés')
const countFiles = (value: number): string => count(value, 'fichier', 'fichiers')
const countFolders = (value: number): string => count(value, 'dossier', 'dossiers')

/** What commands on documents print, in French. */
export const reports: ReportTexts = {
  labelled: ({ label, value }) => `${label} : ${value}`,
  written: ({ path }) => `Écrit : ${path}`,
  nothingWritten: 'Rien n’a été écrit.',
  nameLogFile: 'Rien n’a été écrit : nommer le fichier du carnet avec --out CARNET.',
  nameLogFolder: 'Rien n’a été écrit : nommer le dossier des carnets avec --out DOSSIER.',
  emptyFolder: ({ path }) => `${path} : aucun fichier .json ou .yaml dans ce dossier`,
  emptyFolderBelow: ({ path }) => `${path} : aucun fichier .json ou .yaml dans ce dossier ni au-dessous`,
  skippedNotice: ({ notice }) => `${notice} ; ignoré`,
  skippedPipe: ({ path }) => `${path} est un tube ou un périphérique : ignoré`,

  findings: 'Constats',
  entry: ({ position, severity, message }) => `${position}: ${severity} : ${message}`,
  inFiles: ({ message, count: files }) => `${message} (${files} fichiers)`,
  alsoIn: ({ places, more }) =>
    ` ; aussi dans ${places}${more === 0 ? '' : ` et ${count(more, 'autre fichier', 'autres fichiers')}`}`,
  alsoAtLines: ({ lines }) => ` ; aussi ligne ${lines}`,
  at: ({ code, path }) => `${code} à ${path}`,
  waived: ({ reason }) => `(dérogation : ${reason})`,
  more: ({ count: findings }) =>
    `... et ${findings} de plus : corriger d’abord ceux-ci, ou lister tout avec --format json.`,
  missingKeys: ({ keys, last }) => `Clés manquantes : ${keys} et ${last}.`,
  write: ({ text }) => `écrire : ${text}`,
  writeMeaning: ({ meaning }) => `attendu : ${meaning}, par exemple`,
  belongsAt: ({ meaning, place }) => `${meaning} : va à ${place}, par exemple`,
  indentWithSpaces: 'indenter avec des espaces',
  overrideSetsOne: 'une exception fixe une seule valeur, par exemple',

  column: ({ column, message }) => `Colonne ${column} : ${message}`,
  notATable: ({ problem }) => `pas un tableau : ${problem}`,
  repeatedColumn: 'la colonne figure plus d’une fois',
  cellWithoutColumn: ({ cell }) => `« ${cell} » n’est dans aucune colonne nommée`,
  whichMachine: 'de quelle machine s’agit-il ?',
  whichGearcase: 'quel carter a cette ouverture ?',
  rowRepeated: 'il y a déjà une ligne pour cette pièce',
  cellContradictsRow: 'une autre case de cette ligne a une valeur pour la même pièce',
  unknownColumn: 'attendu : gearcase, opening ou un chemin comme /oilSpace/oils',
  severalUnits: ({ machine, units }) => `${machine} a des distances en ${units.replace(', ', ' et ')}`,
  machineColumnMissing: 'une colonne machine avec l’identifiant ou le numéro de série est attendue',
  dateColumnMissing: 'une colonne date est attendue',
  dataColumnMissing: 'une colonne hours, distance [km], entry ou sheet est attendue',
  unitMissing: 'une unité est attendue, par exemple distance [km] ou hours [h]',
  columnIgnored: 'la colonne n’est pas utilisée',
  contradictsEarlier: ({ cell, earlier }) => `« ${cell} » contredit « ${earlier} » d’une ligne précédente`,
  contradictsLine: ({ cell, earlier, line }) => `« ${cell} » contredit « ${earlier} » de la ligne ${line}`,
  badDate: ({ cell }) => `une date comme 2023-10-06 est attendue, trouvé : « ${cell} »`,
  badNumber: ({ cell, mark }) => `un nombre avec ${MARKS[mark]} est attendu, trouvé : « ${cell} »`,
  noEntry: 'cette ligne n’a ni entrée ni relevé',

  checked: ({ documents, folders, findings, level }) =>
    `${count(documents, 'document lu', 'documents lus')}${folders === 0 ? '' : ` de ${countFolders(folders)}`}, ${countFindings(findings)} de niveau ${level} ou au-dessus.`,
  skipped: ({ parts }) => `Ignoré : ${parts}.`,
  otherFiles: ({ count: files }) => `${countFiles(files)} ni .json ni .yaml`,
  pipes: ({ count: pipes }) => count(pipes, 'tube', 'tubes'),
  emptyFolders: ({ count: folders }) => `${countFolders(folders)} sans document`,
  unsearchedFolders: ({ count: folders }) =>
    `${count(folders, 'dossier caché, lié ou nommé', 'dossiers cachés, liés ou nommés')} node_modules`,
  baselineUsed: ({ accepted, unused }) =>
    `Liste de constats acceptés : ${count(accepted, 'accepté', 'acceptés')}, ${unused} ne se trouvent plus.`,
  baselineWritten: ({ path }) => `Liste de constats acceptés écrite : ${path}.`,
  noSafeFix: 'Aucun constat avec une correction sûre.',
  fixed: ({ findings, files }) =>
    `Corrigé : ${countFindings(findings)} dans ${countFiles(files)}. Comparer chaque changement au manuel de la machine.`,
  canFix: ({ findings, files }) =>
    `Peut être corrigé : ${countFindings(findings)} dans ${countFiles(files)} ; rien n’a été écrit. Comparer chaque changement au manuel de la machine.`,

  notToBeUsed: 'ne pas utiliser',
  noService: 'aucun entretien',
  moreDue: ({ count: services }) => `(+${services} à faire)`,
  faultOpen: ({ date, record, message }) =>
    `NE PAS UTILISER : défaut en cours depuis le ${date} (${record}). ${message}`,
  sampleOpen: ({ bottle, gearcase, date, record, laboratory }) =>
    `Prélèvement d’huile ${bottle} de ${gearcase}, ${date} (${record})${laboratory === '' ? '' : `, laboratoire : ${laboratory}`} : pas encore de résultat.`,
  linesRead: ({ lines, errors }) => `${count(lines, 'ligne', 'lignes')}, ${errors} avec des erreurs.`,
  progress: ({ lines, share }) => `${lines} lignes${share === '' ? '' : `, ${share}`}`,
  line: ({ line, message }) => `ligne ${line} : ${message}`,
  columnsNotRead: ({ columns }) => `Colonnes non lues : ${columns}.`,
  by: ({ name }) => `par ${name}`,
  corrects: ({ record }) => `corrige ${record}`,
  correctedBy: ({ record }) => `corrigé par ${record}`,
  sample: ({ bottle, result }) => ` ; prélèvement ${bottle} : ${result === '' ? 'pas de résultat' : result}`,
  doesNotCount: ({ reason }) => `Ne compte pas. ${reason}`,
  entryDoesNotCount: ({ entry, reason }) => `${entry} : ne compte pas. ${reason}`,
  topUp: ({ date, volume, oil, gearcase }) => `${date}  appoint : ${volume}, ${oil}, ${gearcase}`,

  steps: ({ name, path }) => `Étapes : ${name}, de ${path}`,
  seeFull: 'Valeurs, outils, étapes et rapport : --full',
  cardWritten: ({ paths }) => `Fiche écrite : ${paths}`,
  papersWritten: ({ paths }) => `Papiers écrits : ${paths}`,
  cuesWritten: ({ paths }) => `Conducteur et sous-titres écrits : ${paths}`,
  wallProgress: ({ written, all }) => `${written} sur ${all} fiches murales`,
  wallWritten: ({ written, all, folder }) => `${written} sur ${all} fiches murales écrites dans ${folder}`,
  slipWritten: ({ path }) => `Bon écrit : ${path}`,
  notYetInLog: ({ record }) => `Sur le bon, mais pas encore dans le carnet : ${record}`,

  notKnownFor: ({ machine }) => `Non connu pour ${machine}`,
  load: ({ day, van, machines }) => `${day}, ${van} : ${machines}`,
  kitFor: ({ machines }) => `Lot pour ${machines}`,
  spare: ({ name }) => `${name}, en réserve : seulement si l’ancienne pièce échoue au contrôle`,
  sampleBottle: 'flacon de prélèvement propre avec étiquette',
  countFasteners: ({ part }) => `Compter les fixations (${part}) : le manuel n’indique pas leur nombre.`,
  toOrder: 'À commander, pour tous les lots',
  toOrderFor: ({ day, van }) => `À commander pour ${day}, ${van}`,
  nothing: ({ heading }) => `${heading} : rien`,
  leftOver: ({ volume }) => `reste : ${volume}`,
  noContainer: 'bidon non connu',
  packages: ({ oil, packages }) => `${oil} : ${packages}`,
  nothingDue: 'Rien n’est à faire.',

  noUsedOil: 'Aucune huile usagée n’est notée.',
  usedOil: ({ sum }) => `Huile usagée : ${sum}`,
  noRecipient: 'destinataire non noté',
  keptApartCaution:
    'Ne jamais verser l’huile gardée à part dans la cuve à huile usagée. Demander au point de collecte et suivre les règles locales.',
  keptApart: ({ volume }) => `${volume} gardés à part`,
  withoutReceipt: ({ volume }) => `${volume} sans reçu`,
  withoutVolume: ({ count: lines }) => `${count(lines, 'ligne', 'lignes')} sans volume`,
  drainedNotCounted: ({ volume }) => `vidangé là, non compté : ${volume}`,
  noVolume: 'volume non noté',
  drained: ({ volume }) => `vidangé : ${volume}`,
  to: ({ name }) => `à ${name}`,
  receipt: ({ number }) => `reçu ${number}`,
  keptApartBecause: ({ reason }) => `GARDÉ À PART : ${reason}`,

  stepRemoved: ({ id, action }) => `Étape retirée : ${id} : ${action}`,
  stepWithoutPart: ({ id, part }) => `Étape retirée : ${id} : cette machine n’a pas de ${part}`,
  stepAdded: ({ id, action }) => `Étape ajoutée : ${id} : ${action}`,
  stepMoved: ({ id }) => `Étape déplacée : ${id}`,
  stepsRebuilt: 'Étapes reconstruites dans l’ordre usuel : des changements isolés ne suffisaient pas',
  lostNote: ({ id, note }) => `Note sans étape : ${id} : ${note}`,
  figureChanged: ({ steps, figure, from, to }) => `Changé à ${steps} : ${figure} : ${from} -> ${to}`,
  nothingThere: 'rien',
  sameEffect: 'Les deux procédures ont le même effet.',
  sameFigures: 'Les variantes ont les mêmes valeurs.',
  noDifference: 'Aucune différence.',
  step: ({ change, id }) => `${change} : étape ${id}`,
  finalState: ({ path, first, second }) => `état final changé ${path} : ${first} -> ${second}`,
  finding: ({ change, code }) => `${change} : constat ${code}`,
  notStated: 'non indiqué',
  cannotTell: 'non connu',
  nothingToFix: 'Rien à corriger.',
  noChangeHelps: 'Aucun changement n’aide.',
  dangerousFixed: 'Dangereux, corrigé :',
  alsoFixed: 'Corrigé aussi :',
  filledIn: 'Rempli :',
  filledCount: ({ count: filled }) =>
    `${filled} valeurs et identifiants remplis, chacun avec sa seule valeur possible.`,
  rebuilt:
    'Trop d’erreurs pour des changements isolés : les étapes sont maintenant dans l’ordre usuel, avec les identifiants, notes et autres étapes d’origine.',
  changes: 'Changements :',
  signs: '+ ajouté, - retiré ou déplacé, * autres valeurs ou autre identifiant',

  recordExists: ({ id }) => `Non ajouté : le carnet a déjà un rapport ${id}.`,
  otherSheet: 'Non ajouté : le rapport est d’une autre fiche technique.',
  otherMachine: 'Non ajouté : le rapport est d’une autre machine.',
  recordAppended: ({ path, id, count: records }) =>
    `Ajouté à ${path} : ${id}, ${count(records, 'rapport', 'rapports')}.`,
  fillInRecord:
    'Remplacer chaque ?, corriger les entrées qui diffèrent du travail et supprimer le travail non fait. Puis l’ajouter : record <rapport> <carnet> <fiche> --out CARNET',
  topUpExists: 'Non ajouté : le carnet a déjà cet appoint.',
  topUpAppended: ({ path, volume, date, count: topUps }) =>
    `Ajouté à ${path} : ${volume} le ${date}, ${count(topUps, 'appoint', 'appoints')}.`,
  readingsAdded: ({ hours, distance, kept }) =>
    `Ajouté : ${countReadings(hours)} d’heures et ${countReadings(distance)} de distance ; ${kept} ignorés, déjà dans le carnet.`,
  meterAdded: ({ meter }) => `Le carnet n’avait pas ce compteur (${METERS[meter]}) : il est ajouté.`,
  logChanged: 'Rien n’a été écrit : le carnet a changé entre-temps, et les relevés ne lui vont plus.',
  logChangedAt: ({ path }) => `${path} : a changé entre-temps, et les relevés ne lui vont plus ; non écrit.`,
  fleetAdded: ({ logs, hours, distance, kept, records }) =>
    `${count(logs, 'carnet', 'carnets')} : ${countReadings(hours)} d’heures et ${countReadings(distance)} de distance ajoutés ; ${kept} ignorés, déjà dans les carnets ; ${count(records, 'rapport ajouté', 'rapports ajoutés')}.`,
  logsWritten: ({ folder, count: logs }) => `Écrit : ${count(logs, 'carnet', 'carnets')} dans ${folder}`,
  noNumber: 'aucun numéro',
  numbered: ({ number, message }) => `${number} : ${message}`,
  noLogHasNumber: ({ count: readings }) =>
    `aucun carnet n’a ce numéro ; non ajouté : ${countReadings(readings)}`,
  severalLogsHaveNumber: ({ ids }) => `plusieurs carnets ont ce numéro : ${ids}`,
  recordOf: ({ date, message }) => `Rapport du ${date} : ${message}`,
}
