namespace ShopPlanner.Web.Frame;

/// <summary>Who looks at a page.</summary>
/// <param name="Device">What the ledger calls this browser, e.g. <c>iPad at 192.168.1.20</c>.</param>
/// <param name="Look">Light, dark, or null to follow the system.</param>
/// <param name="Session">The device that is signed in; null where nobody has to.</param>
/// <param name="IsStranger">Whether people sign in here, and nobody did.</param>
public sealed record Visitor(string Device, string? Look, Guid? Session = null, bool IsStranger = false);
