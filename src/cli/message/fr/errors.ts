import type { ErrorTexts } from '../errorTexts.js'
import { joinOr } from './count.js'

const WRITE_ERRORS: Readonly<Record<string, string>> = {
  EACCES: 'pas d’autorisation',
  EPERM: 'pas d’autorisation',
  EROFS: 'le disque est en lecture seule',
  ENOSPC: 'le disque est plein',
  EDQUOT: 'le quota de disque est épuisé',
  EFBIG: 'le fichier serait trop grand',
  EIO: 'erreur du disque',
  EISDIR: 'c’est un dossier',
  ENOTDIR: 'dossier attendu, fichier trouvé',
  EEXIST: 'dossier attendu, fichier trouvé',
  ELOOP: 'ses liens forment une boucle',
  ENAMETOOLONG: 'le nom est trop long',
}
const KINDS = {
  folder: 'un dossier',
  pipe: 'un tube',
  socket: 'un socket',
  device: 'un périphérique',
} as const
const METERS = { hours: 'heures', distance: 'distance' } as const

const suggest = (suggestion: string): string => (suggestion === '' ? '' : ` ; vouliez-vous ${suggestion} ?`)

/** The errors of the command line in French. */
export const errors: ErrorTexts = {
  asWritten: ({ text }) => text,
  programError: ({ problem }) =>
    `erreur dans le programme, pas dans les fichiers : ${problem}\nMerci de la signaler avec la commande et les fichiers.`,

  unknownCommand: ({ name, suggestion }) =>
    `commande inconnue ${name}${suggestion === '' ? ' ; voir drivetrain-service help' : suggest(suggestion)}`,
  unknownOption: ({ option, suggestion, options }) =>
    `${option} est inconnue${suggest(suggestion)} (options : ${options})`,
  otherCommandsOption: ({ option, suggestion, options }) =>
    `${option} n’est pas une option de cette commande${suggest(suggestion)} (options : ${options})`,
  optionNeedsValue: ({ option }) => `${option} : une valeur est attendue`,
  optionTakesNoValue: ({ option }) => `${option} : aucune valeur n’est attendue`,
  notOneOf: ({ given, expected }) => `${given} : attendu, au choix : ${expected}`,
  notADate: ({ given }) => `${given} : une date comme 2023-10-06 est attendue`,
  notANumber: ({ given }) => `${given} : un nombre est attendu`,
  untilBeforeSince: ({ given, since }) => `${given} : ${since} ou plus tard est attendu`,
  badTime: ({ given }) => `${given} : un temps comme 0:14 ou 1:02:03.5 est attendu`,
  badPercentage: ({ given }) => `${given} : un pourcentage au-dessus de 0 et au-dessous de 100 est attendu`,
  badRate: ({ given }) => `${given} : un montant et une monnaie sont attendus, par exemple "65.50 EUR"`,
  badTemperature: ({ given }) => `${given} : une température comme 6degC ou 43degF est attendue`,
  temperatureOutOfRange: ({ given }) => `${given} : de -100 degC à 100 degC est attendu`,
  badEnding: ({ given, endings }) => `${given} : un nom qui finit par ${joinOr(endings)} est attendu`,
  otherFormat: ({ given, format }) => `${given} : ne va pas avec --format ${format}`,
  missingOption: ({ command, option, example }) =>
    `${command} : écrire ${option}, par exemple ${option} ${example}`,
  missingValue: ({ command, example }) =>
    `${command} : une valeur est attendue, par exemple ${command} ${example}`,

  noSuchFile: ({ path }) => `${path} : ce fichier ou dossier n’existe pas`,
  folderNotFile: ({ path }) => `${path} : fichier attendu, dossier trouvé`,
  mayNotRead: ({ path }) => `${path} : pas d’autorisation de lecture`,
  cannotRead: ({ path, problem }) => `${path} : lecture impossible (${problem})`,
  noDocumentFile: () => 'aucun fichier .json ou .yaml trouvé',
  pipe: ({ path }) => `${path} est un tube ou un périphérique ; pour le lire : - < ${path}`,
  noMatch: ({ pattern }) => `${pattern} : aucun fichier ou dossier ne correspond`,
  notJson: ({ path }) => `${path} : pas du JSON`,
  notABaseline: ({ path }) =>
    `${path} n’est pas une liste de constats acceptés : en écrire une avec check --write-baseline`,
  fileExists: ({ path }) => `${path} existe ; choisir un autre nom, ou le supprimer d’abord`,
  cannotWrite: ({ path, code }) => `${path} : écriture impossible (${WRITE_ERRORS[code] ?? code})`,
  otherDocument: ({ path, found, expected }) =>
    `${path} est ${found === '' ? 'un autre fichier' : found}, et non ${expected === '' ? 'un résultat antérieur' : expected} : choisir un autre nom ; rien n’a été écrit`,
  beingWritten: ({ path, holder }) =>
    `${path} : ${holder === '' ? 'un autre processus' : `le processus ${holder}`} l’écrit en ce moment ; réessayer`,
  diskTooSlow: ({ path }) => `${path} : le disque est trop lent ; rien n’a été écrit`,
  notAFile: ({ path, kind }) => `${path} : est ${KINDS[kind]}, pas un fichier ; rien n’a été écrit`,
  notConfirmed: ({ path, code }) => `${path} : écrit, mais le disque ne l’a pas confirmé (${code})`,
  changedMeanwhile: ({ path }) => `${path} a été modifié entre-temps par un autre programme ; réessayer`,
  notThisLog: ({ path, id }) =>
    `${path} n’est pas le carnet ${id}, ou ne peut être lu : choisir un autre nom ; rien n’a été écrit`,
  copyWithoutRecord: ({ path, id }) =>
    `${path} est une autre copie du carnet, sans le rapport ${id} ; rien n’a été écrit`,
  copyWithoutTopUp: ({ path, date }) =>
    `${path} est une autre copie du carnet, sans l’appoint du ${date} ; rien n’a été écrit`,
  copyWithoutReading: ({ path, date }) =>
    `${path} est une autre copie du carnet, sans le relevé du ${date} ; rien n’a été écrit`,

  noLog: () => 'aucun carnet parmi les fichiers',
  noLogWithId: ({ id }) => `aucun carnet avec l’identifiant ${id} parmi les fichiers`,
  severalLogs: ({ ids, count: logs }) =>
    `${logs} carnets trouvés : en choisir un avec --machine ${ids.replaceAll(', ', ' ou ')}`,
  sheetNotFound: ({ name, id, revision, found }) =>
    `${name} : la fiche technique ${id} revision ${revision} n’est pas parmi les fichiers (${found === '' ? 'aucune fiche' : found})`,
  severalToolboxes: () => 'plus d’un outillage parmi les fichiers',
  severalStocks: () => 'plus d’un stock parmi les fichiers',
  oneProcedure: ({ given, count: found }) => `${given} : une procédure est attendue, trouvé : ${found}`,
  oneSheet: ({ given, count: found }) => `${given} : une fiche technique est attendue, trouvé : ${found}`,
  oneLog: ({ given, count: found }) => `${given} : un carnet est attendu, trouvé : ${found}`,
  oneRecord: ({ given, count: found }) => `${given} : un rapport est attendu, trouvé : ${found}`,
  noOilChange: ({ given }) => `${given} : la fiche technique n’a pas de vidange de ce carter`,

  nameMachine: ({ command }) => `${command} : nommer les fichiers ou le dossier d’une machine`,
  nameLogAndSheet: ({ command }) => `${command} : nommer le carnet et sa fiche technique, ou leur dossier`,
  nameLogsAndSheets: ({ command }) =>
    `${command} : nommer des carnets et leurs fiches techniques, ou leurs dossiers`,
  nameFilesToCheck: () => 'check : nommer les fichiers ou dossiers à contrôler',
  dryRunNeedsFix: () => 'check : --dry-run demande --fix',
  nameLogsOrRows: () =>
    'due : nommer des carnets et leurs fiches techniques, leur dossier, ou - pour des lignes de l’entrée standard',
  oneLinesFile: ({ count: files }) => `due : un fichier .jsonl ou - est attendu, trouvé : ${files}`,
  inputTwice: () => 'due : les lignes et une fiche ne peuvent pas venir toutes deux de l’entrée standard',
  noSheet: ({ command }) => `${command} : aucune fiche technique parmi les fichiers`,
  rowsAreShort: () =>
    'due : --brief, --format csv et --format summary demandent des carnets et une fiche ; les lignes ont déjà des réponses courtes',
  nameLogs: () => 'used-oil : nommer des carnets, ou leurs dossiers',
  nameCardFolder: () => 'card : nommer le dossier des fiches avec --out DOSSIER',
  namePaperFolder: () => 'card : nommer le dossier des papiers avec --out DOSSIER',
  nameSheets: () => 'card : nommer des fiches techniques, ou leurs dossiers',
  paperNeedsFiles: ({ paper }) => `card : --paper ${paper} demande des fichiers ou des dossiers`,
  differencesNeedSheet: () => 'card : --paper differences demande une fiche technique',
  twoSheetsOneFile: ({ name }) => `card : deux fiches seraient écrites dans ${name}`,
  notARecord: ({ name, id }) => `${name} n’est pas un rapport de ${id}`,
  noVisit: ({ id }) => `le carnet de ${id} n’a aucun rapport d’une intervention`,
  noSuchRecord: ({ record, id, latest }) =>
    `--record ${record} : le carnet de ${id} n’a pas ce rapport ; ses derniers sont ${latest}`,
  noServiceDue: () => 'procedure : aucun entretien n’est à faire ; en choisir un avec --service',
  logOrSheet: () => 'procedure : un carnet et sa fiche technique sont attendus, ou une fiche et --service',
  noNewRevision: ({ id }) =>
    `procedure : la nouvelle révision de la fiche technique ${id} est attendue parmi les fichiers`,
  captionsNeedTimes: () =>
    'cues : les sous-titres demandent --starts TEMPS pour un fichier, ou --out DOSSIER pour un fichier par scène',
  startsCount: ({ scenes, starts }) =>
    `--starts : un temps pour chacune des ${scenes} scènes est attendu, trouvé : ${starts}`,
  startsTooEarly: ({ start }) =>
    `--starts ${start} : trop tôt ; les sous-titres de la scène précédente demandent plus de temps`,
  noSharedSheet: () => 'compare : la fiche technique des deux procédures est attendue parmi les fichiers',
  nothingToCompare: () =>
    'compare : deux fiches techniques sont attendues, deux procédures avec leur fiche, ou une fiche',
  onlyWithFromPlan: () => 'record : --service et --ambient ne vont qu’avec --from-plan',
  nameRecord: () =>
    'record : nommer le rapport, son carnet, sa fiche technique et l’outillage, ou leur dossier',
  logOfRecordMissing: ({ id }) => `record : le carnet de la machine ${id} n’est pas parmi les fichiers`,
  fromPlanFormat: ({ format }) => `record --from-plan --format ${format} : le rapport est du YAML à remplir`,
  onlyWithTopUp: () => 'record : --at et --on ne vont qu’avec --top-up',
  notWithTopUp: () => 'record : --from-plan, --service et --ambient ne vont pas avec --top-up',
  noMeter: ({ given, meter }) => `${given} : le carnet n’a pas de compteur (${METERS[meter]})`,
  badTopUp: ({ given }) =>
    `${given} : un volume et une huile sont attendus, par exemple "50 mL of gear oil 80W-90"`,
  zeroTopUp: ({ given }) => `${given} : un volume au-dessus de zéro est attendu`,
  sheetOfProcedureMissing: ({ id, revision }) =>
    `repair : la fiche technique ${id} revision ${revision} n’est pas parmi les fichiers`,
  onlySheetIsTable: () => 'new : seule une fiche technique peut être un tableau',
  onlyForSheet: () => 'new : --gearcases, --variants et --from ne vont qu’avec une fiche technique',
  onlyForLog: () => 'new : --sheet ne va qu’avec un carnet',
  notWithFrom: () =>
    'new : --gearcases, --variants et --unit ne vont pas avec --from : ils viennent de la fiche technique',
  badIds: ({ given }) =>
    `${given} : des identifiants distincts de minuscules, chiffres et traits d’union sont attendus, par exemple front,rear`,
  badExampleUnit: ({ given }) =>
    `${given} : une unité de couple, volume, distance ou température est attendue, par exemple lbf.ft ou qt_us`,
  nameTelematics: () =>
    'import : nommer le fichier de télématique et le carnet, dans cet ordre ; ou des pages et des tableaux, et un dossier de carnets',
  notALog: ({ path }) => `import : un carnet est attendu, trouvé : ${path}`,
  severalMachines: ({ number, count: machines }) => `import : ${machines} machines ont le numéro ${number}`,
  noMachine: ({ number, known }) =>
    `import : aucune machine n’a le numéro ${number} (${known}) ; en choisir une avec --equipment`,
  noSerial: ({ known }) =>
    `import : le carnet n’a pas de numéro de série (${known}) ; en choisir un avec --equipment`,

  unreadable: ({ given, message }) => `${given} : ${message}`,
  oneFigure: ({ given }) => `${given} : une seule valeur avec son unité est attendue`,
  marksAndStep: ({ given }) => `${given} : des repères et un pas sont attendus, par exemple "700 mL by 10"`,
  stepNotAboveZero: ({ given }) => `${given} : le pas doit dépasser 0`,
  otherUnit: ({ given, measure, units }) =>
    `${given} : une unité est attendue pour : ${measure}, par exemple ${units}`,
  everyNeedsNoDocument: ({ found }) => `due : --every ne demande aucun document ; trouvé : ${found}`,
  everyGivesOneAnswer: () => 'due : --every donne une seule réponse, sans --brief ni --format csv',
  lastOrFirstUse: () =>
    'due : écrire --last "2022-11-20 at 301.4 h", ou --from-new avec la date de première utilisation si l’entretien n’a jamais été fait',
  lastAfterNow: ({ given, last, now }) => `${given} : ${last} est après ${now}, la date de --now`,
  badDay: ({ given }) =>
    `${given} : une date et des relevés sont attendus, par exemple "2022-11-20 at 301.4 h, 1200 mi"`,
  oneVolume: ({ given }) => `${given} : un seul volume est attendu, pas une plage`,
  highestMarkAndStep: ({ given }) =>
    `${given} : le repère le plus haut et le pas sont attendus, par exemple "700 mL by 10"`,
  twoLengths: ({ given }) => `${given} : deux longueurs sont attendues, par exemple "6 mm x 1 m"`,
  crowfootNeedsLever: () => '--crowfoot : écrire aussi la longueur de la clé, par exemple --lever "250 mm"',
  wrenchRange: ({ given }) => `${given} : une plage est attendue, par exemple "40–200 lbf·in by 1"`,
  badAccuracy: ({ given }) => `${given} : un pourcentage est attendu, par exemple 4% ou "2% of full scale"`,
  oneOil: ({ given }) => `${given} : une seule huile est attendue, par exemple "80W-90 GL-4"`,
}
