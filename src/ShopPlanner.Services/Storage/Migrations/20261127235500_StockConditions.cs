using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class StockConditions : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "BadPlaces",
                table: "StockLedger",
                type: "TEXT",
                nullable: false,
                defaultValue: ""
            );

            migrationBuilder.AddColumn<int>(
                name: "Untrimmed",
                table: "StockLedger",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0
            );

            // What lies in the rack is as bought: one end of a board (1), all edges of a sheet (15) are to be trimmed. A piece
            // that an open plan counts on as it is stays so; the plan that it was bought for trims it anyway.
            migrationBuilder.Sql(
                """
                UPDATE "StockLedger" SET "Untrimmed" = CASE (
                    SELECT "Materials"."Form" FROM "Pieces" JOIN "Materials" ON "Materials"."Id" = "Pieces"."MaterialId"
                    WHERE "Pieces"."Id" = "StockLedger"."PieceId") WHEN 0 THEN 1 ELSE 15 END
                WHERE "PieceId" IN (SELECT "Id" FROM "Pieces" WHERE "Place" = 0)
                AND "PieceId" NOT IN (
                    SELECT "PieceId" FROM "Promises" WHERE "Active" = 1 AND NOT EXISTS (
                        SELECT 1 FROM "Purchases"
                        WHERE "Purchases"."PieceId" = "Promises"."PieceId" AND "Purchases"."PlanId" = "Promises"."PlanId"))
                """
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(name: "BadPlaces", table: "StockLedger");

            migrationBuilder.DropColumn(name: "Untrimmed", table: "StockLedger");
        }
    }
}
