/** What a pot does that somebody turns. */
export const turningText = (free: boolean): string => (free ? 'turns freely under its hook' : 'its legs turn it back')
