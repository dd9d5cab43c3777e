/** Only a package with such a name is loaded as a driver. */
export const PACKAGE_NAME = /^(?:@[a-z0-9][a-z0-9._-]{0,60}\/)?plugmark-driver-[a-z0-9][a-z0-9._-]{0,60}$/;
