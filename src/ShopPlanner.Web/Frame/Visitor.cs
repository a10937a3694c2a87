namespace ShopPlanner.Web.Frame;

/// <summary>Who looks at a page.</summary>
/// <param name="Device">What the ledger calls this browser, e.g. <c>iPad at 192.168.1.20</c>.</param>
/// <param name="Look">Light, dark, or null to follow the system.</param>
public sealed record Visitor(string Device, string? Look);
