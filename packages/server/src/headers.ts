import type { FastifyReply } from 'fastify'

// Nothing but what this server itself serves: no inline script or style, no frames, no forms.
const policy = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
}

/** What every answer carries, an error included. */
const headers = {
  'content-security-policy': Object.entries(policy)
    .map(([what, from]) => `${what} ${from}`)
    .join('; '),
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), geolocation=(), microphone=(), payment=(), usb=()',
  'cache-control': 'no-cache',
}

export const secure = (reply: FastifyReply): FastifyReply => reply.headers(headers)
