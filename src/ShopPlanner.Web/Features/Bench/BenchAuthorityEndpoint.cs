using ShopPlanner.Services.Certificates;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>Hands out the certificate of the shop's own authority, for a tablet to trust.</summary>
internal static class BenchAuthorityEndpoint
{
    /// <summary>Maps the address.</summary>
    public static void MapBenchAuthority(this IEndpointRouteBuilder routes) =>
        routes.MapGet(
            Links.BenchAuthority,
            IResult (WebSettings settings) =>
                ShopCertificates.AuthorityOf(settings.DataFolder) is { } certificate
                    ? TypedResults.File(certificate, "application/x-x509-ca-cert", "shop-planner-authority.crt")
                    : TypedResults.NotFound()
        );
}
