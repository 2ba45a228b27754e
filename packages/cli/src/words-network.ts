/** What serving many jobs, serving a network and its tablets say. */
export const networkEnglish = {
  '--network': 'Serve tablets in this network too. Each is paired once, by a code.',
  '--name.network': 'With --network: what this machine is called there, such as studio.local.',
  '--cert': 'With --network: the certificate of this machine as PEM, to serve https. Needs --key.',
  '--key': 'The key of that certificate, as PEM.',
  'serving-many': 'Serving {count, plural, one {# job} other {# jobs}} of {folder}.',
  'practice-many': 'Unexpected --practice for the jobs of {folder}, expected one job; name its folder',
  'only-with': 'Unexpected {option} without {needs}, expected both; write {needs} too',
  'cannot-read': 'Unexpected {option} {file}, expected a file that can be read; {why}',
  'bad-certificate':
    'Unexpected content of --cert {cert} or --key {key}, expected a certificate and its own key as PEM; the system says {error}',
  'bad-name': 'Unexpected --name {got}, expected what this machine is called in the network; write it like studio.local',
  'devices-broken':
    'Unexpected content of {file}, expected the list of paired tablets; put it right, or move it away and pair every tablet again',
  'pair-first':
    'To pair a tablet, open {link} on it, or any address above and enter {code}. The code is good once, for {count, plural, one {# minute} other {# minutes}}; at {address} there are more.',
  'no-addresses': 'This machine is in no network now; tablets find it once it is in one.',
  'plain-http':
    'This is plain http: others in this network can read what is sent, and a tablet needs this server to open the page again. With --cert and --key neither is so.',
  devices: 'List the tablets that are paired with a folder’s server, or revoke one.',
  'devices.more':
    'The folder is the one that evenhem serve --network serves. A tablet that is revoked is let in no more, also by a server that runs already; what it entered stays.',
  '--revoke': 'Revoke the tablet of this name or id.',
  'no-devices': 'No tablet is paired with {folder} yet; evenhem serve {folder} --network pairs one.',
  'device-revoked': '{name} is revoked.',
  'no-device': 'Unexpected tablet {name}, expected one of {names}; {hint}',
  'no-device-at-all': 'Unexpected tablet {name}, expected none: no tablet is paired with {folder}',
  'several-devices': 'Unexpected name {name}, expected one that a single tablet has; write its id instead: {names}',
  'device-name': 'name',
  'device-id': 'id',
  'device-since': 'since',
  'device-seen': 'last seen',
  'device-unseen': 'never',
} as const
