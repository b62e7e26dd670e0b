/** What the service worker tells the open pages. */
export interface OfflineNews {
  /** The build that is kept now in place of an older one. */
  readonly newBuild: string;
}
