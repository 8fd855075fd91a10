import { expectPlan } from '../support/expectPlan.js'

expectPlan('kvist-2')
