// A page of hono and nothing else: what the machine and the framework give at most.
import { serve } from '@hono/node-server'
import { Hono } from 'hono'

const app = new Hono()
app.get('/', (c) => c.html('<!doctype html><title>bare</title><p>bare</p>'))
serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' }, ({ port }) =>
  console.log(`at http://127.0.0.1:${port}/`),
)
