import type { BlankWords } from '../blankWords.js'
import { joinOr } from './count.js'

/** Comments of documents to fill in, in English. */
export const blanks: BlankWords = {
  fillIn:
    'To fill in a part, delete its {} or [] and the # before the lines below it, then write your own values.',
  log: 'Machine log: the facts, meter readings and services of one machine.',
  firstDay: 'First day of use.',
  plate: 'From its plate.',
  plateOrVariant: ({ variants }) => `From its plate, or its variant: ${joinOr(variants)}.`,
  readings: 'Readings of the hour meter, the odometer or both. The last one is the current state.',
  services: 'Services done: date, meter readings and work.',
  sheet:
    'Spec sheet. Replace "not stated" with what the manual prints, in its own units, as in the examples after #.',
  leaveNotStated: 'Leave "not stated" where the manual gives nothing. Other forms:',
  brackets:
    'Round brackets: the value in another unit. Square brackets: its page. "source": the page of a whole section.',
  levelHole: ({ fill }) =>
    `If the fill hole sets the level, write "uses: fill, level" for that plug, and "fill: ${fill}, to level hole".`,
  severalVariants: 'For a machine with several variants, start with: new --variants short,long',
  or: 'or',
  differing: 'Values that differ in one variant: the path of the value in this sheet, and the value.',
  stock: 'Stock: oil and seals on the shelf. A plan takes from it and lists what to buy.',
  containers: 'Containers, with grade and categories from the label; "opened" is the rest in an opened one.',
  containerData: 'Name and data of an oil go under "oil":',
  seals: 'Seals.',
  toolbox: 'Toolbox: the tools of the workshop. A plan checks them and gives the setting of each wrench.',
  wrenches: 'Torque wrenches: scale as marked, type and square drive.',
  wrenchAccuracy: 'The accuracy is that of ISO 6789 unless you add the maker\'s figure: "4 % of reading".',
  sockets: 'Keys, sockets and bits, with the square drive if they have one.',
  vessels: 'Measuring jugs and bottles: highest mark, and step between marks.',
  pans: 'Drain pans.',
  fillers: 'Funnels with a hose.',
  stands: 'Stands, with the rated load of one stand.',
  ramps: 'Ramps for wheels, and the rated load of one.',
}
