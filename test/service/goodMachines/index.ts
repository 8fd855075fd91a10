import { cartTransaxle, loaderAxle, shaftQuad, tractorAxle } from './axles.js'
import { filterSump } from './filterSump.js'
import type { GoodMachine } from './goodMachine.js'
import { chainCase, greaseBevelBox, levelPlugGearbox, splashPlate, suctionOnly } from './otherBoxes.js'
import { trackedDumper, wheelMotor } from './wheelDrives.js'

/** Machines of kinds that `examples/` does not have, each written like a page of a manual. */
export const GOOD_MACHINES: Readonly<Record<string, GoodMachine>> = {
  'tractor axle with two drains': tractorAxle,
  'loader axle with wheel ends': loaderAxle,
  'tracked dumper': trackedDumper,
  'cart transaxle': cartTransaxle,
  'chain case by suction': chainCase,
  'shaft-drive quad': shaftQuad,
  'gearbox with a level plug': levelPlugGearbox,
  'suction only': suctionOnly,
  'splash plate with clips': splashPlate,
  'wheel motor with brake': wheelMotor,
  'bevel box with semi-fluid grease': greaseBevelBox,
  'transmission-hydraulic sump with filter': filterSump,
}
