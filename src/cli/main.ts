#!/usr/bin/env node
import { nodeWorld } from './nodeWorld.js'
import { runCommand } from './runCommand.js'

// A reader that stops early, such as `head`, is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
  process.exit(0)
})

void runCommand(process.argv.slice(2), nodeWorld()).then((code) => {
  process.exitCode = code
})
