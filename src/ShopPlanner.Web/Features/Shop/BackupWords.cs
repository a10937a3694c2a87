using System.Globalization;
using ShopPlanner.Services.Backups;

namespace ShopPlanner.Web.Features.Shop;

/// <summary>Backups in words.</summary>
internal static class BackupWords
{
    private const double Megabyte = 1_000_000,
        Gigabyte = 1_000_000_000;

    /// <summary>Why a backup was made.</summary>
    public static string Why(BackupView copy) =>
        copy.Why switch
        {
            "daily" => "Daily",
            "by-hand" => "By hand",
            "before-restore" => "Before a restore",
            _ when copy.Why.StartsWith("before-", StringComparison.Ordinal) => "Before an upgrade",
            _ => copy.Why,
        };

    /// <summary>A size on the disk: <c>1.3 MB</c>, <c>48.6 GB</c>.</summary>
    public static string Size(long bytes) =>
        bytes < Gigabyte
            ? string.Create(CultureInfo.InvariantCulture, $"{bytes / Megabyte:0.0} MB")
            : string.Create(CultureInfo.InvariantCulture, $"{bytes / Gigabyte:0.0} GB");
}
