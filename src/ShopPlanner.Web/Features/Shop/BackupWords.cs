using System.Globalization;
using ShopPlanner.Services.Backups;

namespace ShopPlanner.Web.Features.Shop;

/// <summary>Backups in words.</summary>
internal static class BackupWords
{
    private const double Megabyte = 1_000_000;

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

    /// <summary>Its size in megabytes.</summary>
    public static string Size(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / Megabyte:0.0} MB");
}
