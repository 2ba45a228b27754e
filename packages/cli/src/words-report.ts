/** How far a report is, on one line of a terminal. */
export const reportEnglish = {
  'report-copied': 'Copied {done} of {total} photos',
  'report-drawn': 'Drawn {done} of {total} windows',
  'report-setting': 'Setting type, {seconds} s',
} as const
