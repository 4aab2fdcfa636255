/** Everything of a learner that is on disk: settings, record, their places. */

export type { RecordContent } from './export.js';
export { exportPieces, readContent } from './export.js';
export { learnerFolder, learnerName } from './learners.js';
export { paletteOf } from './own-palette.js';
export { MOST_READINGS, READINGS_USED } from './own-readings.js';
export type { OwnBox, OwnMixture, OwnReading, OwnStudio } from './own-studio.js';
export { boxText, MOST_MIXTURES, MOST_OWN_BYTES, parseBox, withoutBox } from './own-studio.js';
export { mergedOwn } from './own-transfer.js';
export type { ProfilePaths } from './paths.js';
export { findPaths } from './paths.js';
export type { LearnerFiles } from './place.js';
export { learnerFiles, makePlace } from './place.js';
export type { SaveResult } from './profile.js';
export { openProfile, Profile } from './profile.js';
export { appendAnswer, appendAnswers } from './record-append.js';
export type { LoadedRecord } from './record-load.js';
export { loadRecord, readEntries } from './record-load.js';
export type { ResolvedSettings, SettingFlags, SettingInForce, SettingSource } from './settings.js';
export { keepSettings, resolveSettings, setSetting } from './settings.js';
export type { SettingKey, SettingValues } from './settings-keys.js';
export { USUAL_PALETTE } from './settings-keys.js';
export { changeOwn } from './studio-file.js';
export type { ReadImport } from './transfer.js';
export { bringIn, MOST_IMPORT_BYTES, readImport, resetRecord } from './transfer.js';
