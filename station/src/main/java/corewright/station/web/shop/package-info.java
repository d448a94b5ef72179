/** How the shop is doing: figures with n and interval, each leading to the units behind it. */
package corewright.station.web.shop;
