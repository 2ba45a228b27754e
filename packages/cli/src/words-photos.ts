/** What the commands about photos say. */
export const photosEnglish = {
  'arg.files': 'files…',
  photos: 'List the photos of a job’s folder, and which windows they show.',
  'photos.more':
    'One line for each photo: the first eight digits of its name, its size, its window and what it shows there. A photo is named by its content; one that a tablet recorded and has not sent yet is listed too.',
  'photos-add': 'Take photos into a job’s folder: JPEG, PNG, WebP or HEIC.',
  'photos-add.more':
    'Each is kept in photos/ under the SHA-256 of its content, as it is; cleaned copies of it, upright and without position or any other private tag, are made in photos/small/. Only those are shown. Exit code 1: a photo was refused. 2: a file could not be read.',
  '--window.photos': 'Record them at this window, each by the name of its file.',
  '--cleaned': 'Keep only the cleaned copy of each, 1600 pixels long, and not the file as it is.',
  'photo-taken': 'taken in',
  'photo-there': 'was there already',
  'photo-unreadable': 'Unexpected file, expected one that can be read; {why}',
  'photo-not-sent': 'not here yet',
  'photos-done': '{done} of {total} photos',
  'no-photos': 'No photo is in {folder} yet; evenhem photos add {folder} <files…> takes some in.',
  'photos-no-folder': 'Unexpected job file {file}, expected a folder with job.json, which has room for photos; name its folder',
  'photos-not-kept':
    'Unexpected answer of the disk ({error}) in {folder}, expected room for photos; make room or mend the disk and add them again, which is safe',
  'photos-not-recorded': 'Unexpected log of {folder}, expected one that takes entries of this desk; {why}',
} as const
